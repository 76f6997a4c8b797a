package layers

import (
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
)

// Beside is what the step wants worked out beside the screen: the table first, it is in front of the eyes,
// and last the longer search.
func Beside(m *desk.Model) (desk.Work, bool) {
	for _, wants := range []func(m *desk.Model) (desk.Work, bool){ways.Plan, PlanCliffs, SearchOn} {
		if w, ok := wants(m); ok {
			return w, true
		}
	}
	return desk.Work{}, false
}
