package figure

import (
	"cmp"
	"encoding/json"
	"slices"
	"strconv"

	"contralay/calc/formula/plan"
)

// Plans is ranked lay-ups as JSON; the first layer is the centre.
func Plans(ps []plan.Plan) ([]byte, error) {
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
		Cost    float64    `json:"cost"`
		Proven  bool       `json:"proven"`
		Fillers int        `json:"fillers"`
		Spares  int        `json:"spares"`
		OverMM  float64    `json:"over_mm"`
		Lumpy   int        `json:"lumpy"`
		Layers  []layerOut `json:"layers"`
	}
	out := make([]planOut, 0, len(ps))
	for _, p := range ps {
		o := planOut{float64(p.Cost), p.Proven, p.Fillers, p.Spares, float64(p.Over), p.Lumpy, nil}
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
