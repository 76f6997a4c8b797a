package power

import (
	"testing"

	"contralay/calc/formula/protect"
	"contralay/calc/query/why"
	"contralay/calc/sheet"
	"contralay/model"
)

// What a feed leaves a wire, by hand: of 16 A less 7 A of its other wires 9 A; of a leg of its own no more than the share of one
// output; never
// less than nothing. The feed carries 12 A, 5 of them by the leg; its fuse is of 20 A, of which 0.8 may be used.
func TestWhatAFeedLeaves(t *testing.T) {
	guard := model.Some(sheet.Guard{Feed: 0})
	s := &sheet.Sheet{H: &model.Harness{Feeds: []model.Feed{{ID: "F"}}}, Wires: []sheet.Wire{{Heats: 5, Guard: guard}, {Heats: 4,
		Guard: guard}},
		Feeds: []sheet.Feed{{Load: 12, Legs: []int{0}, Device: model.Some(protect.Device{Rating: 20})}}}
	s.Limits.FeedLoadMax = 0.8
	e := why.New(s, nil)
	for k, want := range [][]float64{{0, 7, 16}, {0, 8}} {
		w, ok := feedLeaves(e, k, why.Why{})
		if !ok || len(w.In) != len(want) {
			t.Fatalf("wire %d: %+v", k, w.In)
		}
		for n, v := range want {
			if w.In[n].Value != v {
				t.Errorf("wire %d: %s is %v, want %v", k, w.In[n].Name, w.In[n].Value, v)
			}
		}
		for _, c := range []struct {
			in   []float64
			want float64
		}{{[]float64{16, 7}, 9}, {[]float64{16, 7, 4}, 4}, {[]float64{16, 7, 12}, 9}, {[]float64{5, 7, 4}, 0}} {
			if got := w.Formula(c.in); got != c.want {
				t.Errorf("%v: %v, want %v", c.in, got, c.want)
			}
		}
	}
}
