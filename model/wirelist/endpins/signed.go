package endpins

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
)

// partSigned parts the ends that are a device and a pad with a dot or a dash between, of which the pad is too long for a cavity to see it
// there: "MCU.MISO" beside "MCU.3V3". The device has other pads, cavities, or what boards call one; both are written in capitals.
func partSigned(im *draft.Importer) {
	type place struct {
		end         *draft.End
		device, pad string
	}
	var all []place
	places, known := map[string]map[string]bool{}, map[string]bool{}
	add := func(device, pad string) {
		if places[device] == nil {
			places[device] = map[string]bool{}
		}
		places[device][pad] = true
		known[device] = known[device] || arrow.IsPad(pad) || pads.IsChipPad(pad)
	}
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			switch device, pad := cutSigned(e.Text); {
			case e.Term != nil || e.Text == "":
			case e.Pin != "":
				add(name.Key(e.Text), e.Pin)
			case pad != "":
				add(name.Key(device), pad)
				all = append(all, place{e, device, pad})
			}
		}
	}
	for _, p := range all {
		if k := name.Key(p.device); known[k] && len(places[k]) > 1 {
			p.end.Text, p.end.Pin = p.device, p.pad
		}
	}
}

// cutSigned parts such an end at its last dot or dash; pad is "" where it is none.
func cutSigned(text string) (device, pad string) {
	at := strings.LastIndexAny(text, ".-")
	if at < 2 || strings.ContainsAny(text, " :") || strings.ToUpper(text) != text {
		return "", ""
	}
	device, pad = text[:at], text[at+1:]
	if len(pad) < 2 || len(pad) > 8 || strings.Trim(device, "0123456789") == "" {
		return "", ""
	}
	return device, pad
}
