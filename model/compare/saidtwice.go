package compare

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/compare/side"
	"contralay/model/wirelist/value"
)

// An import keeps a remark of a fuse, a pair or a cable in the words of the list, beside the fuse or the unit that it makes of it. What
// changes of these is told as that of the fuse or the unit, and once.

// toldElsewhere is a piece of the note of a wire that says no more than what is compared as its fuse or its unit, or as its size; fused
// says whether there is such a fuse, cores how many wires the unit has, 0 where there is none.
func toldElsewhere(w *model.Wire, piece string, fused bool, cores int) bool {
	if _, rest, ok := value.FuseIn(piece, value.MarkUnknown); ok && rest == "" && fused {
		return true
	}
	if cores == 0 {
		return false
	}
	g, ok := value.ParseGauge(piece, value.BareAWG, value.MarkUnknown)
	same := (g.Conductors == 0 || g.Conductors == cores) && (g.Size == "" || g.Size == w.Size)
	return ok && g.IsCable() && same || value.IsPairMark(piece) || strings.HasPrefix(piece, "cable: ")
}

// coresOf is how many wires the unit of a wire has; 0 where it is in none.
func coresOf(s *side.Side, w *model.Wire) int {
	if u, ok := s.Index.UnitOf[w.ID]; ok {
		return len(s.Harness.Units[u].Wires)
	}
	return 0
}

// notesOf are what is compared of the notes of a wire on both sides.
func (c *comparer) notesOf(p pair) (was, is string) {
	if !c.noted {
		return "", ""
	}
	cores := 0
	if c.gives("unit") {
		cores = max(coresOf(c.was, p.was.wire), coresOf(c.is, p.is.wire))
	}
	return c.note(c.was, p.was.wire, cores), c.note(c.is, p.is.wire, cores)
}

// gives reports whether both lists have a place for fuses or units, which are not compared otherwise.
func (c *comparer) gives(what string) bool {
	has := func(s *side.Side) bool {
		return what == "unit" && len(s.Harness.Units) > 0 || what == "fuse" && len(s.Harness.Feeds) > 0
	}
	return c.first.Gives(what, has(c.was)) && c.second.Gives(what, has(c.is))
}

// note is what is compared of the note of a wire, terminations by their common names.
func (c *comparer) note(s *side.Side, w *model.Wire, cores int) string {
	all := s.List.Texts(w, c.lacks[s])
	if !c.files() {
		_, fused := s.Index.FeedOf[w.ID]
		fused = fused && c.gives("fuse")
		all = slices.DeleteFunc(all, func(piece string) bool { return toldElsewhere(w, piece, fused, cores) })
	}
	return inCommon(s, strings.Join(all, "; "))
}
