package current

import (
	"strings"
	"testing"

	"contralay/calc/formula/protect"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// What is said of a feed by itself, each by its rule and at its limit: the shop allows 180 mm before it and 80 % of its rating.
func TestWhatIsSaidOfAFeed(t *testing.T) {
	type of struct {
		name    string
		kind    protect.Kind
		rating  unit.Ampere
		before  unit.Millimetre
		outputs int
		legs    int
		load    unit.Ampere
		want    string
	}
	const empty = "note feed.empty It feeds nothing: put a wire on it, or remove it"
	for _, c := range []of{
		{"sound", protect.Blade, 10, 180, 1, 1, 8, ""},
		{"empty", protect.Blade, 10, 0, 1, 0, 0, empty},
		{"far behind", protect.Blade, 10, 181, 1, 1, 0, "warn feed.before The wire before it is unprotected for 181 mm; the shop " +
			"allows 180 mm"},
		{"loaded", protect.Blade, 10, 0, 1, 1, 8.1, "warn feed.load It carries 8.1 A of 10 A: at most 8 A, 80 % of its rating"},
		{"joined", protect.Blade, 10, 0, 2, 2, 0,
			"warn feed.outputs Do not join 2 fuses: the load does not share evenly. Give each its own feed"},
		{"an electronic one", protect.Electronic, 10, 0, 2, 2, 16, ""},
		{"half an ampere", protect.Electronic, 7.5, 0, 1, 1, 0,
			"warn feed.rating An electronic limit is set in whole amperes, not to 7.5 A"},
		{"a leg too few", protect.Electronic, 10, 0, 3, 2, 0,
			"warn feed.outputs It has 3 outputs and 2 wires. Each output needs a leg of its own, so 2 count"},
		{"one of none", protect.Electronic, 10, 0, 1, 0, 0, empty},
	} {
		h := &model.Harness{Wires: []model.Wire{{ID: "1"}, {ID: "2"}}, Feeds: []model.Feed{{ID: "F", BeforeMM: model.Some(c.before),
			Outputs: model.Some(c.outputs), Device: model.Some(model.ProtectionBlade)}}}
		f := sheet.Feed{Device: model.Some(protect.Device{Kind: c.kind, Rating: c.rating}), Load: c.load, Outputs: 1}
		if c.kind == protect.Electronic {
			f.Outputs = max(1, min(c.outputs, c.legs))
		}
		f.All = c.rating * unit.Ampere(f.Outputs)
		f.Most = f.All * 0.8
		for k := range c.legs {
			f.Legs, f.Far = append(f.Legs, k), append(f.Far, 0)
		}
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: make([]sheet.Wire, 2), Feeds: []sheet.Feed{f},
			Limits: model.Rules{}.Resolve()}
		sayFeed(s, 0)
		var got []string
		for _, g := range s.Snags {
			if g.Where != "F" {
				t.Errorf("%s: %+v", c.name, g)
			}
			got = append(got, g.Level.String()+" "+g.Rule+" "+g.Says)
		}
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	h := &model.Harness{Feeds: []model.Feed{{ID: "F", Device: model.Some(model.ProtectionBlade)}}}
	for rating, want := range map[unit.Ampere]string{0: "It has no device or no rating, so nothing on it is judged. Give the device " +
		"(blade, " +
		"large blade or electronic) and amps", 6: "Nobody makes a blade of 6 A. Ratings: "} {
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Limits: model.Rules{}.Resolve(), Feeds: []sheet.Feed{{
			Device: model.Opt[protect.Device]{V: protect.Device{Kind: protect.Blade, Rating: rating}, Set: rating > 0}}}}
		sayFeed(s, 0)
		if len(s.Snags) == 0 || !strings.HasPrefix(s.Snags[0].Says, want) || len(s.Snags) != 1+int(rating)/6 {
			t.Errorf("rated %v: %+v", rating, s.Snags)
		}
	}
}
