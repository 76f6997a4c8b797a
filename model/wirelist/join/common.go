package join

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// Every sensor has a "Ground" and a "5 V". Two tables that both say so are the ends of one cable only where they say more
// that is the same.

// isCommonName reports whether the name of a net says no more than what many devices have: a supply, a ground, a signal.
func isCommonName(signal string) bool {
	all := name.Words(table.Fold(signal))
	for _, w := range all {
		volts := strings.TrimSuffix(strings.TrimSuffix(w, "v"), "volt")
		switch {
		case strings.Trim(volts, "0123456789") == "" && (volts != w || volts != ""), isVoltage(w), isCurrent(w):
			continue
		}
		switch w {
		case "power", "pwr", "ground", "gnd", "earth", "supply", "feed", "signal", "sig", "sense", "return", "rtn", "common", "com",
			"vcc", "vdd",
			"vss", "vin", "vbat", "v", "vdc", "dc", "shield", "screen", "drain", "pos", "neg", "positive", "negative", "plus", "minus",
			"live",
			"neutral", "masse", "versorgung", "schirm", "alimentation", "alimentacion", "senal", "massa", "alimentazione", "segnale",
			"zasilanie", "masa", "sygnal", "voeding", "output", "out", "input", "in", "data", "tx", "rx", "clk", "clock":
		default:
			return false
		}
	}
	return len(all) > 0
}

// isCurrent reports whether a folded word is a current, "50ma": "+5V (50mA)" is a supply as "+5V" is.
func isCurrent(w string) bool {
	amps := strings.TrimSuffix(strings.TrimSuffix(w, "a"), "m")
	return amps != w && amps != "" && strings.Trim(amps, "0123456789.") == "" && strings.HasSuffix(w, "a")
}

// pairs tells which connectors are the two ends of one cable by the names of their nets.
type pairs struct {
	nets map[*draft.Term]map[string]string // of each connector: its nets, and how they are called
}

// pairsOf looks at the cavities that have a net and no far end.
func pairsOf(im *draft.Importer) pairs {
	p := pairs{nets: map[*draft.Term]map[string]string{}}
	for _, it := range im.Items {
		if it.Net == "" || it.From.Term == nil || it.State == name.Spare {
			continue
		}
		if p.nets[it.From.Term] == nil {
			p.nets[it.From.Term] = map[string]string{}
		}
		p.nets[it.From.Term][it.Net] = it.Signal
	}
	return p
}

// meet reports whether two connectors that share a common name are the ends of one cable: they share a name of their own
// too, or one has no net that the other lacks.
func (p pairs) meet(a, b *draft.Term) bool {
	mine, theirs := p.nets[a], p.nets[b]
	shared := 0
	for net, called := range mine {
		if _, ok := theirs[net]; ok {
			if isKindOfPin(called) {
				return false
			}
			if shared++; !isCommonName(called) {
				return true
			}
		}
	}
	return shared == len(mine) || shared == len(theirs)
}

// share reports whether most nets of one of two connectors are nets of the other too, so that they are the ends of one cable.
func (p pairs) share(a, b *draft.Term) bool {
	least := min(len(p.nets[a]), len(p.nets[b]))
	return 4*p.shared(a, b) >= 3*least && !twins(a, b)
}

// shared counts the nets that two connectors have in common.
func (p pairs) shared(a, b *draft.Term) (n int) {
	for net := range p.nets[a] {
		if _, ok := p.nets[b][net]; ok {
			n++
		}
	}
	return n
}

// twins reports whether two connectors are called alike but for a side, a number or a letter: "Tail lamp left" and "Tail lamp
// right" have the same nets, and no wire runs from one to the other.
func twins(a, b *draft.Term) bool {
	of := func(t *draft.Term) string {
		var rest []string
		for _, w := range name.Words(table.Fold(t.Name.Or(t.ID))) {
			switch w {
			case "left", "right", "front", "rear", "lh", "rh", "upper", "lower", "inner", "outer", "top", "bottom", "port",
				"starboard", "fore", "aft",
				"links", "rechts", "vorn", "hinten", "gauche", "droite", "droit", "avant", "arriere", "izquierda", "derecha",
				"izquierdo", "derecho",
				"sinistra", "destra", "sinistro", "destro", "lewy", "prawy", "lewa", "prawa", "vanster", "hoger", "fram", "bak":
				continue
			}
			if len(w) > 1 && strings.Trim(w, "0123456789") != "" && !name.IsDesignator(w) && !name.IsGeneric(w) && w != "plug" &&
				w != "socket" &&
				w != "box" {
				rest = append(rest, w)
			}
		}
		return strings.Join(rest, " ")
	}
	return of(a) != "" && of(a) == of(b)
}
