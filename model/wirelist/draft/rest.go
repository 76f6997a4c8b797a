package draft

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/value"
)

// RestOf says what a row of a cavity without wire holds besides.
func (im *Importer) RestOf(it *Item, where string) {
	all := slices.Clone(it.Notes)
	if it.Fuse.Set {
		all = append(all, "fuse "+value.FormatCurrent(it.Fuse.V))
	}
	if it.Amps.Set {
		all = append(all, value.FormatCurrent(it.Amps.V))
	}
	if it.Shield != "" && it.Shield != it.Cable {
		all = append(all, it.Shield)
	}
	for _, text := range []string{it.Signal, it.OwnID, it.Cable, it.CueText, it.FuseName, value.JoinNonEmpty(":", it.To.Text, it.To.Pin)} {
		if text != "" && !name.OnlyState(text) && (text != it.Signal || !name.OnlyFree(text)) {
			all = append(all, text)
		}
	}
	if len(all) > 0 || where == "" {
		im.Say(report.Note, "text on a cavity without wire", it.Place, value.JoinNonEmpty(" ", where, strings.Join(all, "; ")),
			"left in the list")
	}
}
