package join

import (
	"fmt"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
)

// Feeds makes a protective device of each fuse that the rows state: one for each name,
// one for each row that gives only a rating.
func Feeds(im *draft.Importer) {
	at := map[string]int{}
	taken := map[string]bool{} // by a name in the list
	for _, it := range im.Items {
		taken[it.FuseName] = true
	}
	n := 0
	for _, it := range im.Items {
		if !it.Fuse.Set && it.FuseName == "" {
			continue
		}
		w := im.H.Wires[it.Wire]
		if it.FuseName != "" {
			im.Rep.Fuses[w.ID] = it.FuseName
		}
		if k, ok := at[it.FuseName]; ok && it.FuseName != "" {
			f := &im.H.Feeds[k]
			f.Wires = append(f.Wires, w.ID)
			if !f.Amps.Set {
				f.Amps = it.Fuse
			} else if it.Fuse.Set && it.Fuse.V != f.Amps.V {
				im.Say(report.Warn, "two ratings for one fuse", it.Place,
					f.ID+" "+value.FormatCurrent(f.Amps.V)+" and "+value.FormatCurrent(it.Fuse.V), "the first is kept")
			}
			continue
		}
		f := model.Feed{ID: it.FuseName, Amps: it.Fuse, Wires: []string{w.ID}, Name: w.Signal}
		for f.ID == "" || it.FuseName == "" && taken[f.ID] {
			n++
			f.ID = fmt.Sprintf("F%d", n)
		}
		at[f.ID] = len(im.H.Feeds)
		im.H.Feeds = append(im.H.Feeds, f)
	}
}
