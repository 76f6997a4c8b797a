package endpins

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// partInAndOut parts the ends that are a device and a word for the side that is fed or feeds, where the device has other cavities in the
// list: there the word is the cavity.
//
//	From     | To
//	Battery  | FB2 input
//	FB2:1    | Winch
func partInAndOut(im *draft.Importer) {
	type place struct {
		end         *draft.End
		device, pin string
	}
	var all []place
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			if at := strings.LastIndexByte(e.Text, ' '); at > 0 && e.Term == nil && e.Pin == "" && isInOrOut(e.Text[at+1:]) {
				all = append(all, place{e, strings.TrimSpace(e.Text[:at]), e.Text[at+1:]})
			}
		}
	}
	if len(all) == 0 {
		return // most lists
	}
	pinned := map[string]bool{}
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			if e.Term == nil && e.Pin != "" {
				pinned[name.Key(e.Text)] = true
			}
		}
	}
	for _, p := range all {
		if t := im.ByKey[name.Key(p.device)]; pinned[name.Key(p.device)] || t != nil && t.Titled {
			p.end.Text, p.end.Pin = p.device, p.pin
		}
	}
}

// isInOrOut reports whether a word is one for the side of a device that is fed, or that feeds. Common words, from memory, no source.
func isInOrOut(w string) bool {
	const longest = 16 // bytes
	if len(w) > longest {
		return false
	}
	switch table.Fold(w) {
	case "in", "out", "input", "output", "inlet", "outlet", "infeed", "supply", "feed", "line", "load", "common", "eingang",
		"ausgang", "einspeisung",
		"zuleitung", "entree", "sortie", "alim", "alimentation", "commun", "entrada", "salida", "saida", "comun", "ingresso", "uscita",
		"comune", "ingang", "uitgang", "voeding", "wejscie", "wyjscie", "zasilanie", "vstup", "vystup", "napajeni", "utgang",
		"matning", "indgang", "udgang", "inngang", "tulo", "lahto", "syotto", "bemenet", "kimenet", "giris", "cikis", "intrare", "iesire":
		return true
	}
	return false
}
