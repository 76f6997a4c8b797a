package taghues

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Take gives the wires that have none the colours at the end of their numbers, where the numbers of one stem end in several colours and
// in nothing else but the word for a shield, or those of a table do, three or more. A person is told of them.
//
//	WIRE NO     | FROM | TO   | REMARKS
//	G201B22-WHT | P3-4 | P9-1 | SHIELDED PAIR WITH G201B22-ORN
//	G201B22-ORN | P3-5 | P9-2 |
func Take(im *draft.Importer) {
	byStem, byTable := map[stem]*tailed{}, map[stem]*tailed{}
	for _, it := range im.Items {
		front, tail := parts(it.OwnID)
		if tail == "" {
			continue
		}
		c, ok := value.ParseColour(tail, "")
		other := !ok && !isShield(tail) || ok && named(it.Signal, c)
		if !ok {
			c = nil
		}
		enter(byStem, stem{it.Block, front}, it.OwnID, c, other)
		enter(byTable, stem{it.Block, ""}, it.OwnID, c, other)
	}
	var took []*draft.Item
	for _, it := range im.Items {
		front, tail := parts(it.OwnID)
		if tail == "" || len(it.Colour) > 0 || len(it.Each) > 0 {
			continue
		}
		of, all := byStem[stem{it.Block, front}], byTable[stem{it.Block, ""}]
		c, ok := value.ParseColour(tail, "")
		if ok && (of.tellColours() || all.tellColours() && len(all.ids) >= fewest) {
			it.Colour = c
			took = append(took, it)
		}
	}
	if len(took) > 0 {
		im.SayOf(took, "a colour at the end of the number of a wire", took[0].OwnID, "taken as its colour")
	}
}

// stem is what some numbers of a table begin with; "" for all of that table.
type stem struct {
	block int
	text  string
}

// tailed is the numbers of one stem that have a tail.
type tailed struct {
	ids     []string       // different ones, three at most
	colours []value.Colour // different ones, two at most
	other   bool           // some tail is neither the colour of a wire nor the word for a shield
}

// fewest is how many numbers of a table that end in colours are no chance (no source).
const fewest = 3

// enter adds a number to those of its stem; c is its colour, other whether it is something else.
func enter(all map[stem]*tailed, of stem, id string, c value.Colour, other bool) {
	t := all[of]
	if t == nil {
		t = &tailed{}
		all[of] = t
	}
	if len(t.ids) < fewest && !slices.Contains(t.ids, id) {
		t.ids = append(t.ids, id)
	}
	t.other = t.other || other
	if len(c) > 0 && len(t.colours) < 2 && !slices.ContainsFunc(t.colours, c.Equal) {
		t.colours = append(t.colours, c)
	}
}

// named reports whether the name of a wire has its colour too: "stop lamp red" on TL1-RED is a lamp of that colour.
func named(signal string, c value.Colour) bool {
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		of, ok := value.ParseColour(w, "")
		return ok && of.Equal(c)
	})
}

// tellColours reports whether the tails are several colours.
func (t *tailed) tellColours() bool { return len(t.colours) > 1 && !t.other }

// parts are the stem and the tail of a number; the tail is "" where it has none that could be a colour: three letters or more behind a
// sign, or two capital ones of IEC 60757, or behind a digit three capital ones or more. A stem with a word in it, "LED3-RED", is the name
// of a thing.
func parts(id string) (front, tail string) {
	const longest = 40 // bytes of a number with a tail (no source)
	if len(id) < 4 || len(id) > longest || !isLetter(id[len(id)-1]) {
		return "", ""
	}
	at := len(id)
	for at > 0 && (isLetter(id[at-1]) || id[at-1] == '/' && at > 3) {
		at--
	}
	if tail = id[at:]; at < 1 || tail == id || len(tail) < 2 || !value.HasDigit(id[:at]) {
		return "", ""
	}
	front = strings.TrimRight(id[:at], "-_. ")
	signed := front != id[:at]
	switch {
	case hasWord(front):
		return "", ""
	case len(tail) == 2 && !(signed && isCode(tail)), len(tail) > 2 && !signed && tail != strings.ToUpper(tail):
		return "", ""
	}
	return front, tail
}

// isShield reports whether a tail is of the shield of a cable, by a word for it or a short form. Common practice, no source.
func isShield(tail string) bool {
	switch w := table.Fold(tail); w {
	case "scr", "scn", "shd", "shld", "sld", "drn":
		return true
	default:
		return name.IsDrainWord(w)
	}
}

// hasWord reports whether three letters stand together in a text.
func hasWord(text string) bool {
	n := 0
	for i := range len(text) {
		if n++; !isLetter(text[i]) {
			n = 0
		}
		if n > 2 {
			return true
		}
	}
	return false
}

// isLetter reports whether a byte is a plain letter.
func isLetter(b byte) bool { return b >= 'A' && b <= 'Z' || b >= 'a' && b <= 'z' }

// isCode reports whether a tail is a colour of IEC 60757 (1983), from memory.
func isCode(tail string) bool {
	switch tail {
	case "BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ":
		return true
	}
	return false
}
