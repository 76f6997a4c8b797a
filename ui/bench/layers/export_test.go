package layers

// What the tests reach for.
var (
	AddFiller = addFiller
	Lock      = lock
	Locked    = isLocked
	Move      = move
	Shift     = shift
)
