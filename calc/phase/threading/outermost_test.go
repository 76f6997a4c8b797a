package threading

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// The tube that a moulded part lies on, by hand: of a branch of 1,000 mm the last that comes within 100 mm of the place; one under the
// sheath
// only where there is no other.
func TestOutermostTubeAtAPlace(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T", From: "P", To: "J", LengthMM: 1000}}}
	tube := func(id string) model.Opt[catalogue.Tube] { return model.Some(catalogue.Tube{ID: id}) }
	type cover struct {
		id       string
		from, to unit.Millimetre
		under    bool
	}
	for _, c := range []struct {
		name   string
		sheath cover
		covers []cover
		atP    string
		atJ    string
	}{
		{"none", cover{}, nil, "", ""},
		{"a sheath all along", cover{id: "A", from: 0, to: 1000}, nil, "A", "A"},
		{"a sheath from 99 to 901", cover{id: "A", from: 99, to: 901}, nil, "A", "A"},
		{"a sheath from 100 to 900", cover{id: "A", from: 100, to: 900}, nil, "", ""},
		{"a sleeve over it", cover{id: "A", from: 0, to: 1000}, []cover{{"B", 20, 300, false}}, "B", "A"},
		{"a sleeve over it at the other end", cover{id: "A", from: 0, to: 1000}, []cover{{"B", 300, 950, false}}, "A", "B"},
		{"a sleeve under it", cover{id: "A", from: 0, to: 1000}, []cover{{"B", 0, 1000, true}}, "A", "A"},
		{"a sleeve under a sheath that ends before", cover{id: "A", from: 200, to: 1000}, []cover{{"B", 0, 1000, true}}, "B", "A"},
		{"two over it, the last counts", cover{id: "A", from: 0, to: 1000}, []cover{{"B", 0, 1000, false}, {"C", 0, 90, false}}, "C", "B"},
		{"one that is no tube", cover{}, []cover{{"", 0, 1000, false}}, "", ""},
	} {
		b := sheet.Branch{}
		if c.sheath.id != "" {
			b.Sheath = sheet.Sheath{Tube: tube(c.sheath.id), FromMM: c.sheath.from, ToMM: c.sheath.to}
		}
		for _, v := range c.covers {
			out := sheet.Covered{FromMM: v.from, ToMM: v.to, Under: v.under}
			if v.id != "" {
				out.Tube = tube(v.id)
			}
			b.Covers = append(b.Covers, out)
		}
		s := &sheet.Sheet{H: h, Branches: []sheet.Branch{b}}
		for place, want := range map[string]string{"P": c.atP, "J": c.atJ} {
			if got, found := outermostAt(s, 0, place); got.ID != want || found != (want != "") {
				t.Errorf("%s, at %s: %q, want %q", c.name, place, got.ID, want)
			}
		}
	}
}
