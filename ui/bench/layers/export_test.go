package layers

// What the tests reach for.
var (
	AddFiller = addFiller
	FlipOuter = flipOuter
	Lock      = lock
	Locked    = isLocked
	Move      = move
	Shift     = shift
)
