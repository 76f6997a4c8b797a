package figure

import (
	"cmp"
	"encoding/json"
	"slices"
	"strconv"

	"contralay/calc/formula/plan"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
)

// leaves is what limits a plan leaves.
var leaves = map[plan.Relaxed]string{plan.Keeps: "none", plan.Gaps: "gaps", plan.GapLift: "gaps and lift", plan.Nothing: "all"}

// Plans is ranked lay-ups as JSON; the first layer is the centre. as is what each would be as a branch, nil
// where it is not known.
func Plans(ps []plan.Plan, as []*sheet.Branch) ([]byte, error) {
	type layerOut struct {
		Sizes    map[string]int `json:"sizes"`
		Fillers  int            `json:"fillers"`
		FillerMM *float64       `json:"filler_mm"`
		Spares   int            `json:"spares"`
		Takes    *int           `json:"takes"`
		Room     *int           `json:"room"`
		Gap      *float64       `json:"gap"`
		OverMM   float64        `json:"over_mm"`
		ProudMM  float64        `json:"proud_mm"`
		CentreMM *float64       `json:"centre_mm,omitempty"`
	}
	type planOut struct {
		Cost     float64    `json:"cost"`
		Proven   bool       `json:"proven"`
		Least    float64    `json:"least_cost"`
		Fillers  int        `json:"fillers"`
		Spares   int        `json:"spares"`
		OverMM   float64    `json:"over_mm"`
		Lumpy    int        `json:"lumpy"`
		Layers   []layerOut `json:"layers"`
		Relaxed  string     `json:"relaxed"`
		GramPerM *float64   `json:"g_per_m"`
		Bend     *figBend   `json:"bend"`
		Sheath   *figSheath `json:"sheath"`
	}
	out := make([]planOut, 0, len(ps))
	for i, p := range ps {
		o := planOut{Cost: float64(p.Cost), Proven: p.Proven, Least: float64(p.Least), Fillers: p.Fillers, Spares: p.Spares,
			OverMM: float64(p.Over), Lumpy: p.Lumpy, Relaxed: leaves[p.Relaxed]}
		if i < len(as) && as[i] != nil {
			o.Bend, o.Sheath = bend(as[i]), sheath(&as[i].Sheath)
			if as[i].Gram.Set {
				o.GramPerM = some(round(float64(as[i].Gram.V)/float64(offer.PlannedMM)*1000, 3))
			}
		}
		for k, l := range p.Layers {
			y := layerOut{Sizes: map[string]int{}, Fillers: l.Fillers, Spares: l.Spares, OverMM: float64(l.Over), ProudMM: float64(l.Proud)}
			for z, d := range l.Sizes {
				y.Sizes[strconv.FormatFloat(float64(d), 'f', -1, 64)] += l.N[z]
			}
			if l.Fillers > 0 {
				y.FillerMM = some(float64(l.FillerMM))
			}
			if k > 0 {
				y.Takes, y.Room, y.Gap = some(l.Takes), some(l.Room), some(float64(l.Gap))
			}
			if l.CentreMM > 0 {
				y.CentreMM = some(float64(l.CentreMM))
			}
			o.Layers = append(o.Layers, y)
		}
		out = append(out, o)
	}
	slices.SortStableFunc(out, func(a, b planOut) int { return cmp.Compare(a.Cost, b.Cost) })
	b, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(b, '\n'), nil
}
