package explain_test

import (
	"math"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/phase/current"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
)

// What a conductor withstands starts at its hottest point, which leads on, where that is worked out, and else at the air, which
// does not. By
// IEC 60364-5-54 as quoted: k = 226·√ln(1 + (end − start) / (234.5 + start)), with the area squared.
func TestShortStartsWhereItIsKnown(t *testing.T) {
	s := calctest.Laid(t, "feeds")
	met, e := 0, explain.Of(s)
	for i := range e.Feeds {
		for _, k := range current.AllWires(&e.Feeds[i]) {
			w, ok := e.Why(why.Figure{What: "short.bears", Of: e.H.Feeds[i].ID, Part: e.H.Wires[k].ID})
			if !ok {
				continue
			}
			c := &e.Wires[k]
			met++
			if (w.In[0].From != nil) != c.HottestC.Set {
				t.Errorf("%s leads on to %+v, its hottest point is known: %v", w.Name, w.In[0].From, c.HottestC.Set)
			}
			if c.HottestC.Set && w.In[0].Value != float64(c.HottestC.V) {
				t.Errorf("%s starts at %v, its hottest point is %v", w.Name, w.In[0].Value, c.HottestC.V)
			}
			start, end, area := w.In[0].Value, float64(c.Entry.RatedC), float64(c.Entry.AreaMM2)
			want := 226 * 226 * math.Log(1+(end-start)/(234.5+start)) * area * area
			if start < 15 || math.Abs(w.Value-want) > 1e-6*want {
				t.Errorf("%s is %v, from %v °C it is %v", w.Name, w.Value, start, want)
			}
		}
	}
	if met == 0 {
		t.Error("no conductor was met")
	}
}
