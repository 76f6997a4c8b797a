package board

// What the tests reach for.
var (
	Raised      = raised
	RevisionRow = revisionRow
)
