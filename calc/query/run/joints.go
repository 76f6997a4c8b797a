package run

import (
	"fmt"

	"contralay/calc/phase/built"
	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
)

// layAndJoin is every layer of every branch in the order they are laid, and every splice
// once, where it is made.
func layAndJoin(s *sheet.Sheet) []RunStep {
	var out []RunStep
	when := built.MadeWhen(s)
	join := func(branch, layer int) {
		for i, m := range when {
			if m.Branch == branch && m.Layer == layer {
				id := s.H.Splices[i].ID
				out = append(out, RunStep{Key: "join " + id, Kind: JoinStep, Of: id})
			}
		}
	}
	for _, k := range wires.Walked(s) {
		id := s.H.Branches[k.Branch].ID
		layers := len(s.Branches[k.Branch].Layers)
		for l := range layers {
			join(k.Branch, l)
			bare := s.Branches[k.Branch].Layers[l].BuiltMM > 0
			out = append(out, RunStep{Key: fmt.Sprintf("lay %s %d", id, l), Kind: LayStep, Of: id, Layer: l, Bare: bare})
			if bare {
				out = append(out, RunStep{Key: built.BuildUpKey(id), Kind: BuildUpStep, Of: id, Layer: l})
			}
		}
		join(k.Branch, layers)
	}
	join(-1, 0)
	return out
}
