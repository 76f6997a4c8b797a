package desk

import (
	"contralay/model"
	"contralay/ui/bench/kit"
)

// Page is a screen's content: a few lines, then rows to choose from.
type Page struct {
	Lines  []string // above the rows; plain text
	Drawn  []string // below those, painted, made for the width and the height of the list
	Cols   string   // column heads
	Rows   []Row
	Widget Widget                 // in place of rows
	Turn   func(m *Model, by int) // + and − where there are no rows
	Empty  string                 // said where there are no rows
	Start  int                    // the row that a first visit begins on
	Why    []Reason               // the figures of the lines
}

// Row is one thing to choose.
type Row struct {
	Text    string
	TextOf  func() string         // makes text only when the row is on the screen
	Detail  string                // the row once more, in words
	More    func() string         // makes detail only when the row is in hand
	Key     string                // what the row is, where rows come and go above it
	Show    func(m *Model) *Model // the bench as the row would have it; drawn, never changed
	Id      string                // component to mark in the section
	Layer   model.Opt[int]        // layer that the row has in hand, in the section
	Mark    string                // "!" stop, "?" warning
	Enter   func(m *Model)
	Does    string                 // what Enter does there, for the bar; "" opens
	Step    func(m *Model, by int) // + and −
	Steps   string                 // what + does there, for the bar; "" changes
	Field   *Field                 // what digits open
	Drop    func(m *Model)         // "." and Delete: take out
	Why     []Reason               // its figures
	WhyOf   func() []Reason        // makes them only when they are asked for
	Big     string                 // the one number it is about, to be drawn large
	BigSays string                 // its unit and name
	Tints   []kit.Tint             // parts of the text that are better or worse, or quiet
	Heads   bool                   // it heads the rows below it: the cursor goes past it
}

// Line is the row's text.
func (r *Row) Line() string {
	if r.TextOf != nil {
		return r.TextOf()
	}
	return r.Text
}

// Field is a value that can be typed.
type Field struct {
	Label  string
	Unit   string // stands behind the value; never typed
	Value  string
	Number bool
	ID     bool // an id, or what leads to one
	Set    func(m *Model, text string) error
	Scan   bool // a burst that begins with a letter opens it too: a scanner on a label or a badge
	Next   bool // the row below is in hand once it is taken: like values are typed one after another
}

// Of fills in a row's large figure.
func (r Row) Of(figure, words string) Row {
	r.Big, r.BigSays = figure, words
	return r
}
