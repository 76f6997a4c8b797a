package ends

import (
	"fmt"

	"contralay/calc/sheet"
	"contralay/model"
)

// notJudged names a connector of which the file does not give what its contacts are judged
// by. A flying lead and a ring terminal have neither contacts of a size nor a gender. Where only the
// seal is missing nothing is said: many connectors have none.
func notJudged(s *sheet.Sheet, i int) {
	t, out := &s.H.Terminations[i], &s.Terms[i]
	if !connector(t) {
		return
	}
	_, inCatalogue := s.Cat.Insert(t.Insert.V)
	if t.Insert.V != "" && !inCatalogue {
		return // said already
	}
	wired, sized := 0, 0
	for _, c := range out.State {
		if len(c.Wires) > 0 {
			wired++
			if c.Size != "" {
				sized++
			}
		}
	}
	const rest = "whether the wires fit them, what they may carry and which to buy is not judged"
	switch {
	case wired == 0:
	case sized == 0 && !out.Sealed:
		s.SayLike(sheet.Note, "connector.unknown", t.ID, "sizes and seal", "Its contact sizes and its seal are not given: "+rest)
	case sized == 0:
		s.SayLike(sheet.Note, "connector.unknown", t.ID, "sizes", "Its contact sizes are not given: "+rest)
	case sized < wired:
		s.SayLike(sheet.Note, "connector.unknown", t.ID, "sizes",
			fmt.Sprintf("The contact sizes of %d of its %d wired cavities are not given: %s", wired-sized, wired, rest))
	case t.Insert.V != "" && t.Gender.V == "":
		s.SayLike(sheet.Note, "connector.unknown", t.ID, "gender",
			"Its gender is not given: which contacts to buy, and whether another connector can be put in its place, is not judged")
	}
}

// connector reports whether an end is surely a connector: it has an insert, cavities of its
// own in number, or what only a connector has.
func connector(t *model.Termination) bool {
	return t.Insert.V != "" || len(t.Cavities) > 1 || t.Gender.V != "" || t.Key.V != "" || t.Mount.V != "" || len(t.SealMM) > 0
}
