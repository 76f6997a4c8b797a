package join

import (
	"slices"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
)

// Terminations puts the terminations into the harness. One without an insert of the
// catalogue lists its own cavities: those of a pin table in its order, else sorted.
func Terminations(im *draft.Importer) {
	im.H.Terminations = make([]model.Termination, 0, len(im.Terms))
	for _, t := range im.Terms {
		for _, p := range t.Pins {
			if t.State[p] == name.Reserved {
				t.Reserved = append(t.Reserved, p)
			}
		}
		if !t.Insert.Set {
			t.Cavities = slices.Clone(t.Pins)
			if !t.Titled {
				slices.SortFunc(t.Cavities, name.CompareCavities)
			}
		}
		if t.Numbered {
			im.Rep.Numbered[t.ID] = true
		}
		if t.Unsaid {
			im.Rep.Unsaid[t.ID] = true
		}
		im.H.Terminations = append(im.H.Terminations, t.Termination)
	}
}
