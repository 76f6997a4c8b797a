package bench

// page is a screen's content: a few lines, then rows to choose from.
type page struct {
	lines []string // above the rows; plain text
	cols  string   // column heads
	rows  []row
	empty string   // said where there are no rows
	start int      // the row that a first visit begins on
	why   []reason // the figures of the lines
}

// row is one thing to choose.
type row struct {
	text    string
	textOf  func() string         // makes text only when the row is on the screen
	detail  string                // the row once more, in words
	more    func() string         // makes detail only when the row is in hand
	key     string                // what the row is, where rows come and go above it
	show    func(m *Model) *Model // the bench as the row would have it; drawn, never changed
	id      string                // component to mark in the section
	mark    string                // "!" stop, "?" warning
	enter   func(m *Model)
	step    func(m *Model, by int) // + and −
	field   *field                 // what digits open
	drop    func(m *Model)         // "." and Delete: take out
	why     []reason               // its figures
	whyOf   func() []reason        // makes them only when they are asked for
	big     string                 // the one number it is about, to be drawn large
	bigSays string                 // its unit and name
}

// line is the row's text.
func (r *row) line() string {
	if r.textOf != nil {
		return r.textOf()
	}
	return r.text
}

// field is a value that can be typed.
type field struct {
	label  string
	unit   string // stands behind the value; never typed
	value  string
	number bool
	set    func(m *Model, text string) error
}
