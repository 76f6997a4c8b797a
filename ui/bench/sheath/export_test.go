package sheath

// What the tests reach for.
var (
	AddCover = addCover
	StepWall = stepWall
)
