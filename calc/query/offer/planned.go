package offer

import (
	"fmt"
	"maps"

	"contralay/calc"
	"contralay/calc/formula/plan"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Piece is so many wires of one size that no harness holds yet: of a spec and a size, or of a diameter alone.
type Piece struct {
	Spec, Size string
	OverMM     unit.Millimetre
	N          int
}

// PlannedMM is the length of the branch that Planned makes of a lay-up: sheaths slide on shorter ones more easily.
const PlannedMM unit.Millimetre = 1000

// ofNoSpec is the spec of wires that are known by their diameter alone.
const ofNoSpec = "by diameter"

// Planned is the branch that a lay-up would be, PlannedMM long and straight: its sheath, mass and bend. ok is
// false where the plan and the pieces are not of one question.
func Planned(p plan.Plan, pieces []Piece, rules model.Rules, cat *catalogue.Catalogue) (b *sheet.Branch, ok bool) {
	with := *cat
	with.Wires = maps.Clone(cat.Wires)
	h := &model.Harness{Rules: rules, Terminations: []model.Termination{{ID: "P1"}, {ID: "P2"}}}
	by := map[unit.Millimetre][]Piece{} // what is of a diameter, in the order asked for
	for _, z := range pieces {
		if z.Spec == "" {
			z.Spec, z.Size = ofNoSpec, fmt.Sprintf("%gmm", float64(z.OverMM))
			w := catalogue.Wire{Spec: z.Spec, Size: z.Size, OverMM: z.OverMM}
			with.Wires[w.Key()] = w
		}
		by[z.OverMM] = append(by[z.OverMM], z)
	}
	branch := model.Branch{ID: "T1", From: "P1", To: "P2", LengthMM: PlannedMM, Make: model.Some(model.MakeLaid)}
	for k, l := range p.Layers {
		var layer model.Layer
		for z, d := range l.Sizes {
			for range l.N[z] {
				if len(by[d]) == 0 {
					return nil, false
				}
				from := &by[d][0]
				w := model.Wire{ID: fmt.Sprint(len(h.Wires) + 1), Spec: from.Spec, Size: from.Size}
				w.From, w.To = model.Some("P1:"+w.ID), model.Some("P2:"+w.ID)
				h.Wires, layer.Of = append(h.Wires, w), append(layer.Of, w.ID)
				if from.N--; from.N <= 0 && len(by[d]) > 1 { // the last goes on for spares
					by[d] = by[d][1:]
				}
			}
		}
		switch {
		case l.CentreMM > 0:
			layer.BindMM = model.Some(unit.Written(l.CentreMM - l.Sizes[0]))
		case l.Fillers > 0 && k > 0:
			layer.Fillers, layer.FillerMM = model.Some(l.Fillers), model.Some(unit.Written(l.FillerMM))
		}
		branch.Layers = append(branch.Layers, layer)
	}
	h.Branches = []model.Branch{branch}
	s := calc.Build(h, &with, nil)
	return &s.Branches[0], true
}
