package why

import (
	"testing"

	"contralay/model/catalogue"
)

// A figure that is looked up explains itself by one input: the value, its source and how far that can be trusted.
func TestLookedUp(t *testing.T) {
	from := catalogue.Origin{Source: "a drawing, p. 3", Standing: catalogue.Memory}
	w := LookedUp("wall of the tube", 0.8, Diameter, from)
	if w.Name != "wall of the tube" || w.Value != 0.8 || w.Measure != Diameter || w.Standing != catalogue.Memory ||
		w.Says != "the catalogue gives this value" || len(w.In) != 1 || w.In[0].Value != 0.8 {
		t.Errorf("%+v", w)
	}
	if got := w.Formula([]float64{0.9}); got != 0.9 {
		t.Errorf("of 0.9 it makes %v", got)
	}
}
