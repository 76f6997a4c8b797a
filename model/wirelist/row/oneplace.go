package row

import (
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// sayOnePlace says that several cavities of one row go to one thing that has no cavities of its own: the list may mean one wire.
//
//	5 & 6 | OUT 5 | 2.5 | Main bilge pump
func sayOnePlace(im *draft.Importer, cell string, tos []draft.End, at table.Place) {
	if len(tos) != 1 || tos[0].Text == "" || tos[0].Pin != "" || endtext.IsStud(tos[0].Text) {
		return
	}
	im.Say(report.Warn, "several cavities to one place", at, cell+" to "+tos[0].Text,
		"a wire in each, of the size of the row; say which one it is if it is one wire")
}
