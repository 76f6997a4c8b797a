package wires

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/visible"
)

// SayNotes tells of notes that hold what a terminal would obey. Older versions let it in; every
// screen and page shows it as a sign, and the file keeps it.
func SayNotes(s *sheet.Sheet) {
	say := func(where string, note model.Opt[string]) {
		if r, found := visible.InNote(note.V); found {
			s.Say(sheet.Note, "note.control", where,
				fmt.Sprintf("Its note holds %s, shown here as %s: write the note again without it", visible.Kind(r),
					visible.Line(string(r))))
		}
	}
	say("harness", s.H.Head.Note)
	for k := range s.H.Wires {
		say(s.H.Wires[k].ID, s.H.Wires[k].Note)
	}
	for k := range s.H.Builds {
		say("build "+s.H.Builds[k].Serial, s.H.Builds[k].Note)
	}
}
