package draft

import (
	"fmt"
	"slices"

	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
)

// Group is the wires of one cable on their way to a unit.
type Group struct {
	Items  []*Item
	Gauge  value.Gauge
	Name   string
	Drains []*Item // rows that say where its shield is grounded
}

// Group puts two to four wires together.
func (im *Importer) Group(all []*Item, g value.Gauge, name string, in map[*Item]int) {
	if len(all) > 4 {
		im.SayOf(all, "a unit of more wires than a quad", value.JoinNonEmpty(" ", name, report.Counted(len(all), "wire", "wires")),
			"no unit made; kept in the notes")
		for _, it := range all {
			if it.Cable != "" {
				it.Notes, it.Cable = append(it.Notes, "cable: "+it.Cable), ""
			} else if it.CueText != "" && !slices.Contains(it.Notes, it.CueText) {
				it.Notes = append(it.Notes, it.CueText)
			}
			it.Cue, it.CueText = value.Gauge{}, ""
		}
		return
	}
	if g.Conductors > 0 && g.Conductors != len(all) {
		im.Say(report.Warn, "conductors of a cable against its rows", all[0].Place, fmt.Sprintf("%d and %d", g.Conductors, len(all)),
			"made of the rows")
	}
	im.Groups = append(im.Groups, Group{Items: slices.Clone(all), Gauge: g, Name: name})
	for _, it := range all {
		in[it] = len(im.Groups)
	}
}
