package power

import (
	"math"
	"strings"
	"testing"

	"contralay/calc/formula/heat"
	"contralay/calc/phase/current"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
)

// What lies round a disc has a name: the sheath, or the surface where there is none; the air outside; a jacket; a wire by its id; a
// filler. Each is two inputs, what it conducts and how warm it is; their mean by what conducts, with 10 W/m on top, is
// (10 + 2·5 + 3·7) ÷ 5 = 8.2.
func TestWhatLiesRound(t *testing.T) {
	e := why.New(&sheet.Sheet{H: &model.Harness{Wires: []model.Wire{{ID: "w"}, {ID: "v"}}}}, nil)
	discs := []heat.Disc{{CoreMM: 1}, {CoreMM: 1, Ohm: 2}, {}}
	for _, c := range []struct {
		sec  heat.Section
		want string
	}{
		{heat.Section{InsideMM: 9, OutsideMM: 10, Discs: discs}, "sheath near it, air outside, jacket, wire v, filler"},
		{heat.Section{InsideMM: 9, OutsideMM: 9, Discs: discs}, "surface near it, air outside, jacket, wire v, filler"},
		{heat.Section{InsideMM: 9, Discs: discs}, "surface near it, air outside, jacket, wire v, filler"},
	} {
		var round []heat.Meets
		for _, disc := range []int{-1, -2, 0, 1, 2} {
			round = append(round, heat.Meets{Disc: disc, Conducts: 2, C: 30})
		}
		in := meets(e, "T", c.sec, []current.Conductor{{Wire: 1, Disc: 1}}, round)
		var got []string
		for n := 0; n+1 < len(in); n += 2 {
			got = append(got, in[n+1].Name)
			if in[n].Name != "W/(m K) to "+in[n+1].Name || in[n].Value != 2 || in[n+1].Value != 30 ||
				in[n+1].Source != "the same balance of T" {
				t.Errorf("%+v, %+v", in[n], in[n+1])
			}
		}
		if strings.Join(got, ", ") != c.want || len(in) != 10 {
			t.Errorf("%v, want %s", got, c.want)
		}
	}
	if got := weighed([]float64{10, 2, 5, 3, 7}); math.Abs(got-8.2) > 1e-12 {
		t.Errorf("%v, by hand 8.2", got)
	}
}
