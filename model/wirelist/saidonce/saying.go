package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A sentence may say the size and the colour of all wires, and those of some others by the words of their names:
//
//	All wire is 22 except the pump feed which is 16 and the pump ground, also 16.
//	All white, grounds black.
//
// saying is such a sentence on its way. Every word of it has to be understood, else it says nothing: "all 12 wires are new" counts wires.
type saying struct {
	all     draft.Exception   // the values of all others
	others  []draft.Exception // Words are one name each
	shorter map[int]bool      // the names that could go on with the front of the one before: "the pump feed and return"
	waiting int               // the first of the others that no value was said for
	behind  bool              // the last clause that said a value said it of all
	bare    []string          // the sizes that stand without a unit
	square  bool              // some size is in mm²
	gauge   bool              // some size is in AWG
}

// sayingIn reads a text; ok is false where it is no such sentence, or an exception of it is no row of the tables, or every row.
func sayingIn(text, lang string, mark value.Mark, blocks []*shape.Block) (d draft.Default, ok bool) {
	const longest = 250 // bytes (no source)
	if len(text) > longest || !saysAll(text) && !saysRest(text) {
		return d, false
	}
	s := saying{shorter: map[int]bool{}}
	for _, c := range clausesOf(text) {
		if !s.take(c, lang, mark) {
			return d, false
		}
	}
	if s.waiting < len(s.others) || !s.sizes(mark) || s.all.Size == "" && s.all.Colour == nil {
		return d, false
	}
	for k, e := range s.others {
		if !isMet(e.Words, blocks) || s.shorter[k] && !meansSame(s.others[k-1].Words, e.Words, blocks) {
			return d, false
		}
	}
	return draft.Default{Text: text, Mark: mark, Size: s.all.Size, Colour: s.all.Colour, Others: s.others}, true
}

// take takes in a clause; false where a word of it is not understood, or nothing has its values.
func (s *saying) take(c clause, lang string, mark value.Mark) bool {
	of, said := draft.Exception{}, false // the values, and whether they came before the names
	named, ofAll, open, before := len(s.others), false, false, false
	for i := 0; i < len(c.words); i++ {
		w, f, next := c.words[i], table.Fold(c.words[i]), ""
		if i+1 < len(c.words) {
			next = table.Fold(c.words[i+1])
		}
		size, taken := "", false
		if value.HasDigit(f) {
			if size, taken = sizeAt(w, next, mark); size == "" {
				if !isBareSize(f) || isCounted(next) {
					return false
				}
				size, s.bare = w, append(s.bare, w)
			} else {
				s.square, s.gauge = s.square || strings.HasSuffix(size, "mm2"), s.gauge || !strings.HasSuffix(size, "mm2")
			}
		}
		colour, isColour := value.ParseColour(w, lang)
		isColour = isColour && len(f) > 2
		if c := shaded(w, next, lang, nil); !isColour && c != nil {
			colour, isColour = c, true
			i++ // "dark blue"
		}
		if (isColour || size != "") && before {
			return false // "the red lamp 16"
		}
		switch {
		case size != "" && of.Size == "":
			of.Size, said, open = size, true, false
			if taken {
				i++
			}
		case size != "":
			return false
		case isAnd(f):
			open = false
		case saysAll(f) || isRest(f):
			ofAll = true
		case isLittle(f):
		case isColour:
			if of.Colour != nil {
				return false
			}
			of.Colour, said, open = colour, true, false
		case said && (len(s.others) > named || ofAll || s.waiting < named): // another name behind the values of this one
			return s.give(of, ofAll, false) && s.take(clause{words: c.words[i:], aside: c.aside}, lang, mark)
		default:
			if !open {
				s.shorter[len(s.others)] = len(s.others) > named
				s.others, open = append(s.others, draft.Exception{}), true
			}
			before = before || said
			last := &s.others[len(s.others)-1]
			last.Words = append(last.Words, singular(f))
		}
	}
	if ofAll && len(s.others) > named {
		return false // "all motor wires"
	}
	return !said || s.give(of, ofAll, c.aside)
}

// give gives the values of a clause to all wires, or to the names that wait for some. Where none waits, they are of all where the clause
// before spoke of all.
func (s *saying) give(of draft.Exception, ofAll, aside bool) bool {
	to := pointersTo(s.others[s.waiting:])
	if ofAll || len(to) == 0 && s.behind {
		to = []*draft.Exception{&s.all}
		ofAll = true
	}
	for _, e := range to {
		if of.Size != "" && e.Size != "" || of.Colour != nil && e.Colour != nil {
			return false
		}
		if of.Size != "" {
			e.Size = of.Size
		}
		if of.Colour != nil {
			e.Colour = of.Colour
		}
	}
	if ofAll && s.waiting < len(s.others) {
		return false
	}
	s.waiting = len(s.others)
	s.behind = ofAll || aside && s.behind
	return len(to) > 0
}

// sizes gives the numbers without a unit that of the others: where none has one, AWG where some number is only that, mm² where some has
// decimals as wire is made. False where both or neither could be.
func (s *saying) sizes(mark value.Mark) bool {
	if len(s.bare) == 0 {
		return true
	}
	for _, n := range s.bare {
		s.square = s.square || value.IsSection(n)
		s.gauge = s.gauge || shape.IsOnlyAWG(n)
	}
	if s.square == s.gauge {
		return false
	}
	bare := value.BareAWG
	if s.square {
		bare = value.BareMM2
	}
	for _, e := range append([]*draft.Exception{&s.all}, pointersTo(s.others)...) {
		if !slices.Contains(s.bare, e.Size) {
			continue
		}
		g, ok := value.ParseGauge(e.Size, bare, mark)
		if !ok || g.Size == "" {
			return false
		}
		e.Size = g.Size
	}
	return true
}

func pointersTo(all []draft.Exception) (p []*draft.Exception) {
	for k := range all {
		p = append(p, &all[k])
	}
	return p
}
