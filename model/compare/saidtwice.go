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

// toldElsewhere is a piece of the note of a wire that says what is compared as its fuse or its unit; fused and unit say whether there is
// one.
func toldElsewhere(piece string, fused, unit bool) bool {
	if _, rest, ok := value.FuseIn(piece, value.MarkUnknown); ok && rest == "" && fused {
		return true
	}
	if !unit {
		return false
	}
	g, ok := value.ParseGauge(piece, value.BareAWG, value.MarkUnknown)
	return ok && g.IsCable() || value.IsPairMark(piece) || strings.HasPrefix(piece, "cable: ")
}

// notesOf are what is compared of the notes of a wire on both sides.
func (c *comparer) notesOf(p pair) (was, is string) {
	if !c.noted {
		return "", ""
	}
	_, before := c.was.Index.UnitOf[p.was.wire.ID]
	_, after := c.is.Index.UnitOf[p.is.wire.ID]
	unit := before || after // of either list
	return c.note(c.was, p.was.wire, unit), c.note(c.is, p.is.wire, unit)
}

// note is what is compared of the note of a wire, terminations by their common names.
func (c *comparer) note(s *side.Side, w *model.Wire, unit bool) string {
	all := s.List.Texts(w, c.lacks[s])
	if !c.files() {
		_, fused := s.Index.FeedOf[w.ID]
		all = slices.DeleteFunc(all, func(piece string) bool { return toldElsewhere(piece, fused, unit) })
	}
	return inCommon(s, strings.Join(all, "; "))
}
