package join

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Units makes the units of the groups, now that the wires have ids.
func Units(im *draft.Importer) {
	builds := map[int]model.UnitBuild{2: model.BuildPair, 3: model.BuildTriple, 4: model.BuildQuad}
	taken := map[string]int{} // the marks that the lists give their cables
	for _, g := range im.Groups {
		taken[withoutKind(g.Name)]++
	}
	for _, g := range im.Groups {
		u := model.Unit{Build: model.Some(builds[len(g.Items)])}
		var signals []string
		for _, it := range g.Items {
			u.Wires = append(u.Wires, im.H.Wires[it.Wire].ID)
			signals = append(signals, it.Signal)
		}
		called := withoutKind(g.Name)
		if called == "" {
			called = stem(signals)
		}
		if name.IsDesignator(called) && taken[called] == 1 && !im.WireIDs[called] && !im.SpliceIDs[called] {
			u.ID, called = called, ""
		}
		if called != "" {
			u.Name = model.Some(called)
		}
		for u.ID == "" || im.WireIDs[u.ID] || u.ID != withoutKind(g.Name) && taken[u.ID] > 0 {
			im.Units++
			u.ID = fmt.Sprintf("C%d", im.Units)
		}
		kind := string(u.Build.V)
		if g.Gauge.Twisted {
			kind = "twisted " + kind
		}
		if g.Gauge.Shielded {
			u.Shield = model.Some(true)
			kind = "shielded " + kind
		}
		for _, d := range g.Drains {
			groundShield(im, &u, g, d)
		}
		im.H.Units = append(im.H.Units, u)
		im.Rep.Cables[u.ID], im.Rep.Kinds[u.ID] = withoutKind(g.Name), kind
		im.Kinds = append(im.Kinds, kind)
	}
}

// withoutKind takes the words about the kind of a cable out of its name; "cable 1" is no name without its word.
func withoutKind(called string) string {
	own := strings.Join(slices.DeleteFunc(strings.Fields(called), func(w string) bool {
		var g value.Gauge
		return g.Cable(strings.Trim(table.Fold(w), ",.()"))
	}), " ")
	if own != "" && strings.Trim(own, "0123456789") == "" {
		return called
	}
	return own
}

// stem is the words that all signals start with, "CRANK" of "CRANK +" and "CRANK -".
func stem(signals []string) string {
	first := strings.Fields(signals[0])
	n := len(first)
	for _, s := range signals[1:] {
		f := strings.Fields(s)
		k := 0
		for k < min(n, len(f)) && strings.EqualFold(f[k], first[k]) {
			k++
		}
		n = k
	}
	return strings.Join(first[:n], " ")
}
