package join

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Feeds makes a protective device of each fuse that the rows state: one for each name,
// one for each row that gives only a rating. A wire that ends at a fuse, "F2", is of that one.
func Feeds(im *draft.Importer) {
	at := map[string]int{}
	taken := map[string]bool{} // by a name in the list
	for _, it := range im.Items {
		if it.Fuse.Set && it.FuseName == "" {
			it.FuseName = cmp.Or(fuseAtEnd(it), fuseWay(it))
		}
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
		for f.ID == "" || it.FuseName == "" && (taken[f.ID] || im.ByKey[name.Key(f.ID)] != nil) {
			n++
			f.ID = fmt.Sprintf("F%d", n)
		}
		at[f.ID] = len(im.H.Feeds)
		im.H.Feeds = append(im.H.Feeds, f)
	}
}

// fuseAtEnd is the fuse that a wire begins or ends at, by the letter that drawings give fuses, "F2", "-F5"; "" where none is, or two are.
func fuseAtEnd(it *draft.Item) (fuse string) {
	for _, e := range []draft.End{it.From, it.To} {
		if e.Term == nil {
			continue
		}
		id := strings.TrimPrefix(e.Term.ID, "-")
		number, ok := strings.CutPrefix(strings.Replace(id, "FU", "F", 1), "F")
		if !ok || number == "" || strings.Trim(number, "0123456789") != "" {
			continue
		}
		if fuse != "" {
			return ""
		}
		fuse = id
	}
	return fuse
}

// fuseWay is the way of a fuse box that a wire begins or ends at, where the list names no cavity of it, "Fuse box 1": all wires there
// have one fuse. "" where none is, or two are.
func fuseWay(it *draft.Item) (fuse string) {
	for _, e := range []draft.End{it.From, it.To} {
		if e.Term == nil || !words.IsFuseWay(e.Text) || e.Text != cmp.Or(e.Term.Name.V, e.Term.ID) {
			continue
		}
		if fuse != "" {
			return ""
		}
		fuse = e.Term.ID
	}
	return fuse
}
