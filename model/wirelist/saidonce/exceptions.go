package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// withExceptions reads a text that says the size of all wires but of some, which it names. Where a row is found for each of those, the
// others take the size; a person is told all the same. ok is false where it is no such text; the size is "" where the rows are not found.
//
//	Everything is 0.75 mm², apart from ways 1 and 2 of the lamp plug which are 2 mm².
//	all 24 AWG, power and ground 20
func withExceptions(text string, mark value.Mark, blocks []*shape.Block) (d draft.Default, ok bool) {
	if !strings.ContainsAny(text, "0123456789") || !saysAll(text) {
		return d, false
	}
	all, rest, led := cutExceptions(text)
	size := value.SizeWithin(all, mark)
	if size == "" || rest == "" {
		return d, false
	}
	d = draft.Default{Text: text, Mark: mark, Size: size}
	except := exceptionIn(rest, mark, strings.Contains(size, "mm2"))
	if len(except.Words) == 0 && len(except.Pins) == 0 || !led && except.Size == "" {
		return d, false
	}
	if !metAll(except, blocks) {
		d.Size = ""
		return d, true
	}
	d.Except = &except
	return d, true
}

// cutExceptions parts a text before the word that leads to its exceptions, or else, with none that leads to them, before the comma behind
// what speaks of all wires.
func cutExceptions(text string) (all, rest string, led bool) {
	at := 0
	for w := range strings.FieldsSeq(text) {
		i := strings.Index(text[at:], w) + at
		at = i + len(w)
		if words.IsExcept(table.Fold(strings.Trim(w, ",.;:("))) && i > 0 {
			return text[:i], text[at:], true
		}
	}
	all, rest, _ = strings.Cut(text, ", ")
	if !saysAll(all) || !value.HasDigit(rest) {
		return text, "", false
	}
	return all, rest, false
}

// exceptionIn reads which wires a text speaks of, and their size: "the pump leads, which are 16 AWG", "power and ground 20".
func exceptionIn(text string, mark value.Mark, square bool) (e draft.Exception) {
	e.Size = value.SizeWithin(text, mark)
	all := commas.Parts(text, " \t,;:()/")
	pins := false
	for i, w := range all {
		w = strings.Trim(table.Fold(w), ".")
		last := i == len(all)-1
		switch {
		case strings.Trim(w, "0123456789.,") == "":
			if e.Size == "" && last && !pins {
				bare := value.BareAWG
				if square {
					bare = value.BareMM2
				}
				if g, ok := value.ParseGauge(w, bare, mark); ok {
					e.Size = g.Size
				}
			} else if pins {
				e.Pins = append(e.Pins, strings.Split(w, ",")...) // "pins 1,2"
			}
		case isCavityWord(w):
			pins = true
		case w == "and" || w == "und" || w == "et" || w == "y" || w == "e" || w == "en" || w == "och" || w == "&" || w == "+":
		case value.HasDigit(w):
			pins = false
			if value.SizeWithin(w, mark) == "" {
				e.Words = append(e.Words, w)
			}
		default:
			pins = false
			if !isSmall(w) {
				e.Words = append(e.Words, singular(w))
			}
		}
	}
	return e
}

// isCavityWord reports whether a folded word stands before the numbers of cavities.
func isCavityWord(w string) bool {
	switch singular(w) {
	case "pin", "way", "cavity", "cavitie", "terminal", "position", "kontakt", "kontakte", "broche", "voie", "polo", "contacto", "stift":
		return true
	}
	return false
}

// isSmall reports whether a folded word of an exception says nothing of which wires it means.
func isSmall(w string) bool {
	switch w {
	case "which", "that", "from", "to", "ones", "one", "two", "three", "four", "those", "these", "for", "plus", "have", "use", "has",
		"only", "marked", "bigger", "thicker", "heavier", "die", "das", "der", "den", "zu", "vom", "zum", "zur", "fur", "auf", "les",
		"le", "la", "qui", "las", "los", "que", "lo", "gli", "il", "at", "on", "by", "where", "noted", "said", "plug", "connector",
		"side", "it", "as", "go", "going", "leads", "lead", "runs", "lines", "feeds", "stecker", "into":
		return true
	}
	return words.IsOfAnyWire(w) || words.IsExcept(w)
}

// singular is a folded word without the s of more than one.
func singular(w string) string {
	if len(w) > 3 && !strings.HasSuffix(w, "ss") {
		return strings.TrimSuffix(w, "s")
	}
	return w
}

// metAll reports whether each thing that an exception names is found in a row, and not in all of them.
func metAll(e draft.Exception, blocks []*shape.Block) bool {
	met, of, rows := map[string]bool{}, 0, 0
	for _, b := range blocks {
		for _, r := range b.Rows {
			if shape.IsText(r) {
				continue
			}
			rows++
			if isExcepted(&e, b, r.Cells, met) {
				of++
			}
		}
	}
	for _, p := range e.Pins {
		if !met[p] {
			return false
		}
	}
	if len(e.Pins) == 0 && slices.ContainsFunc(e.Words, func(w string) bool { return !met[w] }) {
		return false
	}
	return of > 0 && of < rows
}

// isExcepted reports whether a row is one that an exception names, and enters what it was known by.
func isExcepted(e *draft.Exception, b *shape.Block, cells []string, met map[string]bool) bool {
	if len(e.Pins) > 0 {
		pin := b.Cell(cells, name.FieldPin)
		if pin == "" || !slices.Contains(e.Pins, table.Fold(pin)) {
			return false
		}
		title := name.Words(table.Fold(titleOf(b)))
		if slices.ContainsFunc(e.Words, func(w string) bool { return !hasWord(title, w) }) {
			return false
		}
		met[table.Fold(pin)] = true
		return true
	}
	is := false
	for i, c := range cells {
		if i < len(b.Cols) && (b.Cols[i].Field == name.FieldNote || b.Cols[i].Field == name.FieldKeep) {
			continue // "no ground at the jack" is no ground
		}
		all := name.Words(table.Fold(c))
		for _, w := range e.Words {
			if hasWord(all, w) {
				met[w], is = true, true
			}
		}
	}
	return is
}

func hasWord(all []string, w string) bool {
	return slices.ContainsFunc(all, func(s string) bool { return singular(s) == w })
}

// titleOf is what stands above a table and names it.
func titleOf(b *shape.Block) string {
	var all []string
	for _, r := range b.Titles {
		all = append(all, r.Cells...)
	}
	return strings.Join(all, " ")
}
