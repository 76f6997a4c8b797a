package sheet

// SparePlace is where a spare could run: a free cavity at both ends that take the
// wire, and the branches between them.
type SparePlace struct {
	From, To string // TERMINATION:CAVITY; From lies on the from side of the branch
	CappedAt string // where it is dead-ended, To being ""
	Path     []int
	Like     int // wire whose spec and size it takes
}
