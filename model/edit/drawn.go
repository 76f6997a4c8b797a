package edit

import (
	"contralay/model"
	"contralay/model/unit"
)

// What edits of the tree do to the drawing: a branch keeps its shape on it where it can.

// backward reports whether a branch is drawn from its to end: the datum lies on that side. The
// drawing of a harness without a datum is taken to run the way its branches do.
func backward(h *model.Harness, branch int) bool {
	d := h.Board.Datum.V
	return d != "" && side(model.NewIndex(h), branch, h.Branches[branch].To)[d]
}

// bends is the bends that lie from one station of a branch to another, counted from there.
func bends(all []model.Via, from, to unit.Millimetre, last bool) []model.Via {
	var out []model.Via
	for _, v := range all {
		if v.AtMM >= from && (v.AtMM < to || last) {
			v.AtMM = unit.Written(v.AtMM - from)
			out = append(out, v)
		}
	}
	return out
}

// splitDrawing parts what is drawn of a branch: each part has the bends that lie on it, and the
// part further from the datum goes straight on where anything was said of the whole.
func splitDrawing(first, second *model.Branch, whole *model.Branch, station unit.Millimetre, backward bool) {
	first.Vias = bends(whole.Vias, 0, station, false)
	second.Vias = bends(whole.Vias, station, whole.LengthMM, true)
	if !whole.LeavesDeg.Set && len(whole.Vias) == 0 {
		return
	}
	near, far := first, second
	if backward {
		near, far = second, first
	}
	near.LeavesDeg, far.LeavesDeg = whole.LeavesDeg, model.Some[unit.Degree](0)
}

// joinDrawing draws the two that became one as they were: p and then q, and a bend where they met.
func joinDrawing(one, p, q *model.Branch, backward bool) {
	near, far, way := p, q, unit.Degree(1)
	if backward {
		near, far, way = q, p, -1
	}
	one.LeavesDeg = near.LeavesDeg
	one.Vias = append([]model.Via(nil), p.Vias...)
	if far.LeavesDeg.V != 0 {
		one.Vias = append(one.Vias, model.Via{AtMM: p.LengthMM, TurnDeg: way * far.LeavesDeg.V})
	}
	for _, v := range q.Vias {
		v.AtMM = unit.Written(v.AtMM + p.LengthMM)
		one.Vias = append(one.Vias, v)
	}
}

// turnedBends is the bends of a branch seen from its other end.
func turnedBends(b *model.Branch) []model.Via {
	var out []model.Via
	for k := len(b.Vias) - 1; k >= 0; k-- {
		v := b.Vias[k]
		v.AtMM = max(0, unit.Written(b.LengthMM-v.AtMM))
		if v.TurnDeg != 0 {
			v.TurnDeg = -v.TurnDeg
		}
		out = append(out, v)
	}
	return out
}
