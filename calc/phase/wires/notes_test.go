package wires_test

import (
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// A note with a control character is told once, whatever else is in it; line feeds and tabs are
// what a note is made of, and letters of every script say nothing.
func TestNotesThatCommand(t *testing.T) {
	for _, tt := range []struct{ name, note, says string }{
		{"none", "", ""},
		{"two lines and a tab", "first\nsecond\r\n\tthird", ""},
		{"letters", "Größe é Ω 線 می\u200Cشود", ""},
		{"an old control character", "first\nsecond \x01\x02",
			"Its note holds a control character, shown here as ␁: write the note again without it"},
		{"a sequence", "\x1b[2J", "Its note holds a control character, shown here as ␛: write the note again without it"},
		{"in eight bits", "\u009b2J", "Its note holds a control character, shown here as ␛[: write the note again without it"},
		{"a mark of direction", "a\u202eb",
			"Its note holds a mark of writing direction, shown here as <U+202E>: write the note again without it"},
	} {
		h := *calctest.Load(t, "example.toml")
		h.Wires = append([]model.Wire{}, h.Wires...)
		h.Head.Note, h.Wires[0].Note = model.Some(tt.note), model.Some(tt.note)
		h.Builds = []model.Build{{Serial: "007", Note: model.Some(tt.note)}}
		var got []string
		for _, g := range calc.Build(&h, calctest.Catalogue(t), nil).Snags {
			if g.Rule != "note.control" {
				continue
			}
			got = append(got, g.Where)
			if g.Says != tt.says || g.Level != sheet.Note {
				t.Errorf("%s: %+v", tt.name, g)
			}
		}
		if want := map[bool]int{true: 3}[tt.says != ""]; len(got) != want {
			t.Errorf("%s: told at %v, want %d places", tt.name, got, want)
		}
	}
}
