package toldpairs

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/freesaid"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
)

// cavities are the wires of one connector by their cavities in it; nil under a cavity with several.
type cavities struct {
	of  *draft.Term
	all map[string]*draft.Item
}

// cavitiesOf are those of a connector.
func cavitiesOf(items []*draft.Item, of *draft.Term) cavities {
	c := cavities{of, map[string]*draft.Item{}}
	for _, it := range items {
		for _, e := range []draft.End{it.From, it.To} {
			if e.Term != of || e.Pin == "" {
				continue
			}
			o, twice := c.all[table.Fold(e.Pin)]
			if twice && o != it {
				it = nil
			}
			c.all[table.Fold(e.Pin)] = it
		}
	}
	return c
}

func (c cavities) find(called string) *draft.Item { return c.all[table.Fold(called)] }

// spoken is what a sentence says of cavities that are twisted together.
type spoken struct {
	pins []string
	sure bool // the words say that they are cavities, or of which connector
}

// twists reads a sentence that twists wires of the connector together that it calls by their cavities.
//
//	6 and 7 are twisted together, keep it that way
//	Nota: i fili 6 e 7 del C1 sono intrecciati.
//	Kontakte A und B sind verdrillt
//
// named says that the sentence names the connector, and that what names it is taken out of the words.
func (c cavities) twists(words []string, named bool) (s spoken) {
	first, last, twists := -1, -1, false
	for i, w := range words {
		switch {
		case isTwist(w):
			twists = true
		case c.isOne(words, i):
			s.pins = append(s.pins, w)
			s.sure = s.sure || named || i > 0 && freesaid.IsCavityWord(table.Fold(words[i-1]))
		case denies(words, i):
			return spoken{}
		default:
			continue
		}
		if first < 0 {
			first = i
		}
		last = i
	}
	if !twists || len(s.pins) < 2 || len(s.pins) > 4 || len(s.pins) > 2 && !slices.ContainsFunc(words, isOfSeveral) || again(s.pins) {
		return spoken{}
	}
	if !s.sure && c.isOne(words, last) && last+1 < len(words) && !ends(words[last+1]) {
		return spoken{} // "twisted with 6 turns"
	}
	for i, w := range words[first:last] {
		goes := table.Fold(w) == "van" && isTwist(words[first+i+1]) // "van trenzados"; "6 van 7" are six of seven
		if !isTwist(w) && !c.isOne(words, first+i) && !links(w) && !freesaid.IsCavityWord(table.Fold(w)) && !goes {
			return spoken{}
		}
	}
	if lead := words[:first]; len(lead) > 0 && !leads(lead[len(lead)-1]) {
		return spoken{}
	}
	return s
}

// isOne reports whether a word is a cavity that has one wire: a number, or what has a word for cavities, wires or a link to one before it.
// "E 7 sono intrecciati" has no cavity E.
func (c cavities) isOne(words []string, i int) bool {
	w := words[i]
	if c.find(w) == nil || !name.IsCavity(w) {
		return false
	}
	if strings.ContainsAny(w, "0123456789") {
		return true
	}
	between := i > 0 && i+1 < len(words) && c.find(words[i-1]) != nil && c.find(words[i+1]) != nil
	return w == strings.ToUpper(w) && !(between && links(w))
}

// ends reports whether a word may stand right behind the last cavity: it counts nothing.
func ends(w string) bool { return links(w) || isTwist(w) || strings.HasPrefix(w, "-") }

// leads reports whether a word may stand right before what is twisted.
func leads(w string) bool {
	f := table.Fold(w)
	return links(w) || freesaid.IsCavityWord(f) || followsWire([]string{w}) || strings.HasSuffix(w, ":") || slices.Contains(leadWords, f)
}

// leadWords are words that begin such a sentence. Common words, no source.
var leadWords = strings.Fields(`note nb remember important please n.b. hinweis achtung wichtig bitte nota attention attenzione importante
	atencion uwaga let op obs that keep only die der i les los las de os a przewody zyly zily vodice johtimet johdot dratene`)

// denies reports whether a word says that something is not so, or was so once; "no. 4" counts.
func denies(words []string, i int) bool {
	f := table.Fold(words[i])
	if f == "no" {
		return i+1 == len(words) || !isNumber(words[i+1])
	}
	return slices.Contains(denials, f)
}

// denials are such words. Common words, no source.
var denials = strings.Fields(`not never don't don’t dont isn't isn’t aren't aren’t without instead were was nicht kein keine ohne
	statt waren war ne pas jamais sans etaient non senza erano sin nunca eran nao sem eram nie bez byly niet geen zonder inte ej utan
	ikke uden uten ei nem nu`)

func again(pins []string) bool {
	return len(slices.Compact(slices.Sorted(slices.Values(pins)))) < len(pins)
}

// namedIn takes the name of a connector with the words round it out of some words, "del C1", "of plug C1"; ok is false where it is not
// there.
func namedIn(words, called []string) (rest []string, ok bool) {
	for i := 0; i+len(called) <= len(words); i++ {
		if !slices.EqualFunc(words[i:i+len(called)], called, func(a, b string) bool { return table.Fold(a) == b }) {
			continue
		}
		from := i
		for from > 0 && (name.IsConnectorWord(table.Fold(words[from-1])) || prose.LeadsConnector(table.Fold(words[from-1])) ||
			slices.Contains([]string{"the", "dem", "la", "le", "el", "il", "de", "o"}, table.Fold(words[from-1]))) {
			from--
		}
		if from > 0 && name.JoinsDevice(table.Fold(words[from-1])) {
			from--
		}
		return slices.Concat(words[:from], words[i+len(called):]), true
	}
	return words, false
}

// saysItself reports whether a sentence can hold the name of a connector for nothing else: it has two characters and no number alone.
func saysItself(called string) bool {
	return len(called) > 1 && strings.Trim(called, "0123456789 ") != ""
}
