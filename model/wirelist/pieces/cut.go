package pieces

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// piece is a part of a line between two marks.
type piece struct {
	text  string
	aside bool // it stands in brackets
	to    bool // a word or sign for where a wire goes stands before it
	from  bool // a word for where it comes from does
}

// marks part what a line says.
var marks = []string{"\t", "  ", ", ", "; ", " | ", " - ", " – ", " — ", ": ", ". ", " = "}

// cut parts a line; ok is false where it says twice where something goes.
func (r reader) cut(text string) (all []piece, ok bool) {
	text = strings.TrimSpace(strings.TrimLeft(strings.TrimSpace(text), "-*•·>"))
	for _, p := range withoutBrackets(text) {
		if p.aside {
			all = append(all, p)
			continue
		}
		p.text = r.polesKept(p.text)
		for _, m := range marks {
			p.text = strings.ReplaceAll(p.text, m, "\n")
		}
		for part := range strings.SplitSeq(p.text, "\n") {
			if part = strings.Trim(part, " ,;:."); part != "" && strings.Trim(part, "-–—") != "" {
				for _, p := range r.atTo(part) {
					for _, p := range atFrom(p) {
						all = append(all, atWire(p)...)
					}
				}
			}
		}
	}
	n := 0
	for _, p := range all {
		if p.to {
			n++
		}
	}
	return slices.DeleteFunc(all, func(p piece) bool { return p.text == "" }), n < 2
}

// polesKept joins the pole of a device to its name, where a word or sign for where the wire goes stands behind it: "pump - to the stud" has
// no dash between two texts.
func (r reader) polesKept(text string) string {
	for from := 0; ; {
		at := strings.Index(text[from:], " - ")
		if at < 0 {
			return text
		}
		at += from
		behind := strings.TrimSpace(text[at+3:])
		if pieces := r.atTo(behind); len(pieces) == 2 && pieces[0].text == "" {
			text = text[:at] + ":-" + text[at+2:]
		}
		from = at + 3
	}
}

// withoutBrackets parts a line at its brackets.
func withoutBrackets(text string) (all []piece) {
	for {
		open := strings.IndexAny(text, "([")
		if open < 0 {
			return append(all, piece{text: text})
		}
		end := strings.IndexByte(text[open:], ")]"[strings.IndexByte("([", text[open])])
		if end < 0 {
			return append(all, piece{text: text})
		}
		all = append(all, piece{text: text[:open]}, piece{text: strings.TrimSpace(text[open+1 : open+end]), aside: true})
		text = text[open+end+1:]
	}
}

// toWords are the words for where a wire goes, those of one letter among them in the languages that have such.
func (r reader) toWords() []string {
	if r.romance {
		return append(words.ToWords(), "a", "al", "ao", "alla")
	}
	return words.ToWords()
}

// atTo parts a piece at the arrow or the word that says where a wire goes.
func (r reader) atTo(text string) []piece {
	if from, to := arrow.In(text); to > 0 {
		return []piece{{text: strings.TrimSpace(text[:from])}, {text: strings.TrimSpace(text[to:]), to: true}}
	}
	low := " " + strings.ToLower(text) + " "
	if len(low) != len(text)+2 {
		return []piece{{text: text}}
	}
	for _, w := range r.toWords() {
		at := strings.Index(low, " "+w+" ")
		if at < 0 || at+len(w) >= len(text) {
			continue
		}
		behind := strings.TrimSpace(text[at+len(w):])
		if first, _, _ := strings.Cut(strings.ToLower(behind), " "); words.IsPaper(first) {
			continue
		}
		return []piece{{text: strings.TrimSpace(text[:at])}, {text: behind, to: true}}
	}
	return []piece{{text: text}}
}

// atFrom parts a piece at the word that says where a wire comes from.
func atFrom(p piece) []piece {
	w := strings.Fields(p.text)
	for i, s := range w {
		if i+1 < len(w) && words.ComesFrom(table.Fold(s)) {
			front := piece{text: strings.Join(w[:i], " "), to: p.to}
			return []piece{front, {text: strings.Join(w[i+1:], " "), from: true}}
		}
	}
	return []piece{p}
}

// atWire parts a piece at the words for a wire behind an end, "terminal 2 of the ignition switch a white wire".
func atWire(p piece) []piece {
	const most = 4 // words from the article to the wire (no source)
	w := strings.Fields(p.text)
	for i, s := range w {
		for k := i + 1; i > 0 && k < len(w) && k-i < most && words.IsArticle(strings.ToLower(s)); k++ {
			if w[k] == "wire" || w[k] == "lead" {
				front := p
				front.text = strings.Join(w[:i], " ")
				return []piece{front, {text: strings.Join(w[i:], " ")}}
			}
		}
	}
	return []piece{p}
}
