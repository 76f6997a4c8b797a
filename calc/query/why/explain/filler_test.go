package explain_test

import (
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/why"
	"contralay/calc/query/why/explain"
)

// A filler for which the file gives no size is the layer's thinnest wire, from the same reel, 1.09 mm here, and says so; where
// the layer gives one, it says that.
func TestFillerSaysWhatItIs(t *testing.T) {
	for more, want := range map[string]string{"fillers = 1\n": "It is the layer's thinnest wire, from the same reel",
		"fillers = 1\nfiller_mm = 1.0\n": "It is set on the layer"} {
		s := calctest.Built(t, calctest.OneSize(6, "22", "length_mm = 400.0\nmake = \"laid\"\n  [[branch.layer]]\n  of = [\"0\"]\n"+
			"  [[branch.layer]]\n  of = [\"1\", \"2\", \"3\", \"4\", \"5\"]\n  "+more))
		w, ok := explain.Figure(s, why.Figure{What: "layer.filler", Of: "T1", K: 1})
		if !ok || w.Says != want || len(w.In) != 1 || w.Made() != w.Value {
			t.Errorf("%q: %v %+v", more, ok, w)
		}
		if strings.Contains(more, "1.0") && w.Value != 1 || !strings.Contains(more, "1.0") && w.Value != 1.09 {
			t.Errorf("%q: %v mm", more, w.Value)
		}
	}
}

// A layer that holds more than it takes says how it was found out: what it holds less what is too many. Eight of 1.09 mm do not
// go round one of 1.09 mm, which takes six (at most (2π)/(2·asin ½) = 6).
func TestLayerTakesFewer(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(9, "22", "length_mm = 400.0\nmake = \"laid\"\n  [[branch.layer]]\n  of = [\"0\"]\n"+
		"  [[branch.layer]]\n  of = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\", \"8\"]\n"))
	w, ok := explain.Figure(s, why.Figure{What: "layer.takes", Of: "T1", K: 1})
	if !ok || w.Value != 6 || w.Made() != 6 || len(w.In) != 2 || w.In[0].Value != 8 {
		t.Errorf("%v %+v", ok, w)
	}
}

// A layer with room for more holds what lies in it and what it has room for: five of 1.09 mm round one, and room for a sixth.
func TestLayerTakesMore(t *testing.T) {
	s := calctest.Built(t, calctest.OneSize(6, "22", "length_mm = 400.0\nmake = \"laid\"\n  [[branch.layer]]\n  of = [\"0\"]\n"+
		"  [[branch.layer]]\n  of = [\"1\", \"2\", \"3\", \"4\", \"5\"]\n"))
	w, ok := explain.Figure(s, why.Figure{What: "layer.takes", Of: "T1", K: 1})
	if !ok || w.Value != 6 || w.Made() != 6 || len(w.In) != 2 || w.In[0].Value != 5 || w.In[1].Value != 1 {
		t.Errorf("%v %+v", ok, w)
	}
}
