package values

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/paper/figure"
)

// told is what one sheet has other than another, in words, with the figures that the words hold.
type told struct {
	parts []string
	why   []desk.Reason
}

func (t *told) put(format string, a ...any) { t.parts = append(t.parts, fmt.Sprintf(format, a...)) }

// figure has W say where a number comes from.
func (t *told) figure(name string, v float64, measure why.Measure) {
	from := catalogue.Origin{Source: "the same harness, worked out with the other rule", Standing: catalogue.House}
	t.why = append(t.why, desk.Reason{Made: func() (why.Why, bool) {
		return why.Stated(name, "the same figure with the rule as it is compared", v, measure, from), true
	}})
}

// differs says in one line what one sheet has other than another, what decides first.
func differs(was, is *sheet.Sheet, sys unit.System) (string, []desk.Reason) {
	t := &told{}
	points := func(s *sheet.Sheet, level sheet.Level) (n int) {
		for _, p := range s.Snags {
			if p.Level == level {
				n++
			}
		}
		return n
	}
	t.count(points(was, sheet.Stop), points(is, sheet.Stop), "stop", "stops")
	t.count(points(was, sheet.Warn), points(is, sheet.Warn), "warning", "warnings")
	t.branches(was, is, sys)
	t.count(was.Totals.Fillers, is.Totals.Fillers, "filler", "fillers")
	t.count(was.Totals.Spares, is.Totals.Spares, "spare", "spares")
	if d := math.Abs(float64(is.Totals.WireMM - was.Totals.WireMM)); d >= 50 {
		t.put("%s m %s wire", unit.Fixed(d/1000, 1), words.Either(is.Totals.WireMM > was.Totals.WireMM, "more", "less"))
		t.figure("how much the wire differs", d, why.Length)
	}
	if a, b := was.Totals.Gram, is.Totals.Gram; a.Set && b.Set && math.Abs(float64(b.V-a.V)) >= 0.5 {
		t.put("%s g %s", unit.Fixed(math.Abs(float64(b.V-a.V)), 0), words.Either(b.V > a.V, "heavier", "lighter"))
		t.figure("how much the mass differs", math.Abs(float64(b.V-a.V)), why.Mass)
	}
	t.limits(was, is)
	if len(t.parts) == 0 {
		t.bill(was, is)
	}
	if n := apart(was, is); len(t.parts) == 0 && n > 0 {
		return words.Plural(n, "figure changes", "figures change") + ", none as much as is shown here", nil
	}
	if len(t.parts) == 0 {
		return "nothing changes on this harness", nil
	}
	if len(t.parts) > 5 {
		t.parts = append(t.parts[:5], "and more")
	}
	return strings.Join(t.parts, ", "), t.why
}

func (t *told) count(a, b int, one, many string) {
	if b != a {
		d := max(b-a, a-b)
		t.put("%d %s %s", d, words.Either(b > a, "more", "fewer"), words.Either(d == 1, one, many))
	}
}

// branches are what changes on the first branch that changes, and how many others do.
func (t *told) branches(was, is *sheet.Sheet, sys unit.System) {
	more := 0
	for i := range min(len(was.Branches), len(is.Branches)) {
		a, b := &was.Branches[i], &is.Branches[i]
		lay, turned := -1, -1
		for k := range min(len(a.Layers), len(b.Layers)) {
			if sys.Length(a.Layers[k].LayMM) != sys.Length(b.Layers[k].LayMM) {
				lay = k
			}
			if a.Layers[k].Hand != b.Layers[k].Hand {
				turned = k
			}
		}
		makes, over := a.Make != b.Make, sys.Diameter(a.OverMM) != sys.Diameter(b.OverMM)
		layers := len(a.Layers) != len(b.Layers)
		sheath := a.Sheath.Part != b.Sheath.Part
		id := is.H.Branches[i].ID
		switch {
		case !makes && !over && !layers && lay < 0 && turned < 0 && !sheath:
			continue
		case more > 0:
			more++
			continue
		case makes:
			t.put("%s %s, now %s", id, b.Make, a.Make)
		case layers:
			t.put("%s in %s, now %d", id, words.Plural(len(b.Layers), "layer", "layers"), len(a.Layers))
		}
		more++
		if over {
			t.put("%s OD %s, now %s %s", id, sys.Diameter(b.OverMM), sys.Diameter(a.OverMM), sys.Name())
			t.figure("OD of "+id, float64(b.OverMM), why.Diameter)
			t.figure("OD of "+id+" now", float64(a.OverMM), why.Diameter)
		}
		if lay >= 0 && !layers {
			t.put("%s %s lay %s, now %s %s", id, model.LayerName(lay), sys.Length(b.Layers[lay].LayMM), sys.Length(a.Layers[lay].LayMM),
				sys.Name())
			t.figure("lay of "+id, float64(b.Layers[lay].LayMM), why.Length)
			t.figure("lay of "+id+" now", float64(a.Layers[lay].LayMM), why.Length)
		}
		if turned >= 0 && !layers {
			name := id
			if turned > 0 {
				name += " " + model.LayerName(turned)
			}
			t.put("%s turns %s, now %s", name, b.Layers[turned].Hand, a.Layers[turned].Hand)
		}
		if sheath {
			t.put("%s sheath %s, now %s", id, words.OrDash(b.Sheath.Part), words.OrDash(a.Sheath.Part))
		}
	}
	if more > 1 {
		t.put("%s too", words.Plural(more-1, "other branch", "other branches"))
	}
}

// limits are what changes in what wires may carry and how warm they get.
func (t *told) limits(was, is *sheet.Sheet) {
	n, first, cuts, hot, hottest := 0, "", 0, 0, ""
	for k := range min(len(was.Wires), len(is.Wires)) {
		a, b := &was.Wires[k], &is.Wires[k]
		if a.Cut != b.Cut {
			cuts++
		}
		if at, bt := unit.Fixed(a.HottestC.V, 0), unit.Fixed(b.HottestC.V, 0); at != bt {
			if hot++; hot == 1 {
				hottest = fmt.Sprintf("wire %s %s C, now %s C", is.H.Wires[k].ID, bt, at)
				t.figure("how warm wire "+is.H.Wires[k].ID+" gets", float64(b.HottestC.V), why.Celsius)
				t.figure("how warm it gets now", float64(a.HottestC.V), why.Celsius)
			}
		}
		if at, bt := unit.Fixed(a.Bound.V.Amps, 1), unit.Fixed(b.Bound.V.Amps, 1); at != bt {
			if n++; n == 1 {
				first = fmt.Sprintf("wire %s may carry %s, now %s A", is.H.Wires[k].ID, bt, at)
				t.figure("what wire "+is.H.Wires[k].ID+" may carry", float64(b.Bound.V.Amps), why.Amperes)
				t.figure("what it may carry now", float64(a.Bound.V.Amps), why.Amperes)
			}
		}
	}
	for _, c := range []struct {
		n     int
		first string
	}{{n, first}, {hot, hottest}} {
		switch {
		case c.n == 1:
			t.put("%s", c.first)
		case c.n > 1:
			t.put("%s, and %s", c.first, words.Plural(c.n-1, "other", "others"))
		}
	}
	if cuts > 0 {
		t.put("%s cut to another length", words.Plural(cuts, "wire", "wires"))
	}
}

// bill is the first thing to buy of which another number is bought.
func (t *told) bill(was, is *sheet.Sheet) {
	old, bought := lists.Bill(was), map[string]float64{}
	for _, r := range old {
		bought[r.Group+" "+r.Part] -= r.Order
	}
	rows := lists.Bill(is)
	for _, r := range rows {
		bought[r.Group+" "+r.Part] += r.Order
	}
	for _, r := range append(rows, old...) {
		if d := unit.RoundHalfUp(bought[r.Group+" "+r.Part], 0.01); d != 0 {
			t.put("%s %s %s of %s %s to buy", words.Trim(math.Abs(d)), words.Either(r.Metres, "m", "pieces"),
				words.Either(d > 0, "more", "less"), r.Group, r.Part)
			t.figure("how much more or less is bought", math.Abs(d), why.Times)
			return
		}
	}
}

// apart counts the figures of two sheets that are not the same, however little.
func apart(was, is *sheet.Sheet) int {
	var a, b any
	for _, one := range []struct {
		s  *sheet.Sheet
		to *any
	}{{was, &a}, {is, &b}} {
		text, err := figure.All(one.s)
		if err != nil || json.Unmarshal(text, one.to) != nil {
			return 0
		}
	}
	return differing(a, b)
}

// differing counts the leaves that differ in two trees of decoded JSON.
func differing(a, b any) int {
	switch a := a.(type) {
	case map[string]any:
		b, is := b.(map[string]any)
		if !is {
			return 1
		}
		n := 0
		for k := range a {
			n += differing(a[k], b[k])
		}
		return n
	case []any:
		b, is := b.([]any)
		if !is || len(a) != len(b) {
			return 1
		}
		n := 0
		for k := range a {
			n += differing(a[k], b[k])
		}
		return n
	}
	if a != b {
		return 1
	}
	return 0
}
