package farside

import (
	"strconv"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/endtext"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
)

// OwnDevices gives a device that is called as the plug of its lead is a termination of its own: all rows of the plug that say where
// their wires go name the plug itself, without a cavity, and no other row names it so. A designator is the plug and no device.
//
//	Plug      Pin   Function   To
//	Display   1     12 V       Display
//	          2     ground     Display
func OwnDevices(im *draft.Importer) {
	own, others := map[*draft.Term][]*draft.Item{}, map[*draft.Term]bool{}
	for _, it := range im.Items {
		if it.From.Term == nil && it.From.Text != "" && it.From.Pin == "" {
			others[im.ByKey[name.Key(it.From.Text)]] = true
		}
		if it.To.Term != nil || it.To.Text == "" {
			continue
		}
		plug := im.ByKey[name.Key(it.To.Text)]
		switch at := it.From; {
		case it.State == name.Blank, it.State == name.Reserved:
		case at.Term != nil && at.Term == plug && at.Pin != "" && it.To.Pin == "":
			own[plug] = append(own[plug], it)
		case it.To.Pin == "":
			others[plug], others[at.Term] = true, true
		case at.Term != nil:
			others[at.Term] = true // its wires go to another plug
		}
	}
	for _, plug := range im.Terms {
		rows := own[plug]
		if len(rows) < 2 || others[plug] || !plug.Titled || !isDevice(rows[0].To.Text) {
			continue
		}
		device := im.Another(rows[0].To.Text, rows[0].Place)
		device.Numbered = true
		im.Say(report.Note, "a device called as its plug is", rows[0].Place, rows[0].To.Text,
			"a termination of its own; its cavities are numbered, one for each wire")
		for i, it := range rows {
			it.To = draft.End{Term: device, Pin: strconv.Itoa(i + 1)}
			device.Pin(it.To.Pin, it.State, it.Place)
		}
	}
}

// isDevice reports whether the text of an end can be a device that wires are taken to.
func isDevice(text string) bool {
	return !name.IsDesignator(text) && !name.IsSpliceName(text) && !endtext.IsStud(text) && !endtext.SaysOpen(text) &&
		name.StateOf(text) == name.Used && !name.IsUnknown(text)
}
