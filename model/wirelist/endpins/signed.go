package endpins

import (
	"iter"
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
	for e := range openEnds(im) {
		if device, pad := cutSigned(e.Text); e.Pin == "" && pad != "" {
			all = append(all, place{e, device, pad})
		}
	}
	if len(all) == 0 {
		return // as in most lists
	}
	places, known := map[string]map[string]bool{}, map[string]bool{}
	add := func(device, pad string) {
		if places[device] == nil {
			places[device] = map[string]bool{}
		}
		places[device][pad] = true
		known[device] = known[device] || arrow.IsPad(pad) || pads.IsChipPad(pad)
	}
	for e := range openEnds(im) {
		if e.Pin != "" {
			add(name.Key(e.Text), e.Pin)
		}
	}
	for _, p := range all {
		add(name.Key(p.device), p.pad)
	}
	for _, p := range all {
		if k := name.Key(p.device); known[k] && len(places[k]) > 1 {
			p.end.Text, p.end.Pin = p.device, p.pad
		}
	}
}

// openEnds are the ends with a text that are no termination yet.
func openEnds(im *draft.Importer) iter.Seq[*draft.End] {
	return func(yield func(*draft.End) bool) {
		for _, it := range im.Items {
			for _, e := range []*draft.End{&it.From, &it.To} {
				if e.Term == nil && e.Text != "" && !yield(e) {
					return
				}
			}
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
