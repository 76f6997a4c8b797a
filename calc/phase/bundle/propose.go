package bundle

import (
	"encoding/binary"
	"math"
	"strconv"

	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// PlanKey names the planning question of a branch: its components, their sizes
// and how far each runs, what is held and wished, and the rules. Two branches
// with the same question have one answer.
func PlanKey(s *sheet.Sheet, i int) string {
	if s.Branches[i].PlanKey == "" {
		s.Branches[i].PlanKey = Question(s, i)
	}
	return s.Branches[i].PlanKey
}

// Question is PlanKey worked out anew: it keeps nothing in the sheet, which may be read elsewhere at the same time.
func Question(s *sheet.Sheet, i int) string {
	r := RanksOf(s, i)
	var buf []byte
	num := func(v float64) { buf = binary.LittleEndian.AppendUint64(buf, math.Float64bits(v)) }
	text := func(t string) { buf = append(append(buf, t...), 0) }
	p := PlanRules(s)
	for _, v := range []unit.Ratio{p.LayRatio, p.LiftMax, p.LiftTight, p.GapInner, p.GapOuter, p.LumpyAt, p.FillerWeight, p.SpareGain,
		unit.Ratio(s.Limits.LeaverWeight)} {
		num(float64(v))
	}
	for _, id := range s.Branches[i].Components {
		text(id)
		num(float64(s.Dia(id).Nominal))
		num(float64(r.Depth[id]))
		num(float64(r.Way[id].Tail))
		num(float64(r.Way[id].Cavity))
		num(float64(r.Next[id]))
	}
	for _, h := range Held(s, i) {
		num(float64(h.Layer))
		for _, id := range h.Ids {
			text(id)
		}
		num(float64(h.Fillers))
		num(float64(h.FillerMM))
		num(float64(h.Lay))
		num(float64(h.Bind))
		buf = strconv.AppendBool(buf, h.Locked)
	}
	num(float64(LikeNow(s, i)))
	for _, p := range SparesFor(s, i) {
		text(p.From)
		text(p.To)
		num(float64(s.Wires[p.Like].Dia.Nominal))
		num(float64(p.Like)) // an option has its spares by number: of another sheet they would be other wires
		for _, b := range p.Path {
			num(float64(b))
		}
		num(-1)
	}
	b := &s.H.Branches[i]
	for _, w := range []model.Opt[bool]{b.LeaversOut, b.UnitsIn} {
		buf = strconv.AppendBool(buf, w.Or(true))
	}
	return string(buf)
}

// PlanRules are the rules of the shop that the planner keeps to.
func PlanRules(s *sheet.Sheet) plan.Rules {
	l := s.Limits
	return plan.Rules{LayRatio: l.LayRatio, LiftMax: l.LiftMax, LiftTight: l.LiftTight, GapInner: l.GapInner, GapOuter: l.GapOuter,
		LumpyAt: l.LumpyAt, FillerWeight: l.FillerWeight, SpareGain: l.SpareGain}
}

// Holding is what the file holds of one layer, by id.
type Holding struct {
	Layer int
	Ids   []string
	plan.Held
}

// Held is what the builder holds fixed: locked layers, pinned components, and lay
// lengths of their own.
func Held(s *sheet.Sheet, i int) []Holding {
	var out []Holding
	for k, l := range LayersOf(s, i) {
		h := Holding{Layer: k, Held: plan.Held{At: k, Lay: l.LayMM.V}}
		switch {
		case l.Locked.V:
			h.Ids, h.Locked, h.Fillers, h.FillerMM, h.Bind = l.Of, true, l.Fillers.V, l.FillerMM.V, l.BindMM.V
		case len(l.Pinned) > 0:
			h.Ids = l.Pinned
		case l.LayMM.V <= 0:
			continue
		}
		out = append(out, h)
	}
	return out
}

// LikeNow is the number of layers a plan must have, or differ from by an even
// number, so that no hand of a locked layer turns; 0 where none is locked.
func LikeNow(s *sheet.Sheet, i int) int {
	for _, h := range Held(s, i) {
		if h.Locked {
			return len(LayersOf(s, i))
		}
	}
	return 0
}
