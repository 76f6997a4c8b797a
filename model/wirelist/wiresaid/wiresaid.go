// Package wiresaid makes a table of sentences that begin with a word for a wire and its number each.
//
//	wire 1: black 2.5, from Q4 pin 2 to KM1 pin 1
//	wire 2: deleted
//	wire 3: green/yellow 2.5, from the earth bar to the motor pin PE
//
// What the pieces are is told by all lines together (package toldcells). It is asked before anyone looks for tables.
package wiresaid

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
	"contralay/model/wirelist/words"
)

const (
	least     = 3    // such lines (no source)
	mostLines = 2000 // a longer list is made by a program, which does not write lines of this kind (no source)
	longest   = 200  // bytes of a line (no source)
)

// Rows makes rows of a table of such lines; they are as they were where there are less than three, or more than one
// in four is not understood.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || len(t.Rows) < least || len(t.Rows) > mostLines {
		return t.Rows
	}
	var lines []toldcells.Line
	all, ends := 0, 0
	last, lead := 0, ""
	var gone []toldcells.Wire // what is told of a number alone
	for i, r := range t.Rows {
		if r.Level > 0 || r.Struck || r.Drawn != nil || r.Ruled {
			continue
		}
		text := toldcells.Text(r.Cells)
		if len(text) > longest {
			continue
		}
		word, id, rest := front(text)
		n, _ := strconv.Atoi(id)
		if word == "" || lead != "" && word != lead || n <= last {
			continue
		}
		lead, last = word, n
		all++
		l := toldcells.Line{Row: i, ID: id}
		parse(&l, rest)
		if l.From == "" {
			if l.To == "" && len(l.Cells) == 1 && signoff.IsDeleted(rest) {
				all-- // "wire 2: deleted"
				gone = append(gone, toldcells.Wire{Row: i, ID: id, Note: rest})
			}
			continue
		}
		if l.To != "" {
			ends++
		}
		lines = append(lines, l)
	}
	if ends < least || 4*len(lines) < 3*all {
		return t.Rows
	}
	told := toldcells.Tell(lines, toldcells.Unit(t.Rows), true)
	if _, coloured, _ := told.Good(); 5*coloured < 4*len(told.Wires) || !told.HasCavities() {
		return t.Rows
	}
	told.Wires = append(told.Wires, gone...)
	rows, _ := told.Spread(t, nil)
	return rows
}

// front is the word for a wire that a line begins with, its number, and what stands behind a colon; word is "" where it begins with none.
func front(text string) (word, id, rest string) {
	head, rest, ok := strings.Cut(strings.TrimLeft(text, "-*• "), ":")
	w := strings.Fields(head)
	if !ok || len(w) != 2 || strings.Trim(w[1], "0123456789") != "" {
		return "", "", ""
	}
	switch word = table.Fold(w[0]); word {
	case "wire", "lead", "conductor", "core", "ader", "draht", "leitung", "fil", "conducteur", "hilo", "cable", "filo", "cavo", "draad",
		"ledning", "leder", "ledare", "vodic", "zyla", "fio": // from memory, no source
		return word, w[1], strings.TrimSpace(rest)
	}
	return "", "", ""
}

// parse reads what stands behind the colon: the piece with both ends, or the near one, and the others as they are.
func parse(l *toldcells.Line, text string) {
	for p := range strings.SplitSeq(strings.ReplaceAll(strings.TrimRight(text, ". "), "; ", ", "), ", ") {
		w := strings.Fields(p)
		if len(w) < 2 || l.From != "" || !comesFrom(w[0]) {
			l.Cells = append(l.Cells, p)
			continue
		}
		aside := ""
		if open := strings.LastIndexByte(p, '('); open > 0 && strings.HasSuffix(p, ")") {
			p, aside = strings.TrimSpace(p[:open]), strings.Trim(p[open:], "()")
			w = strings.Fields(p)
		}
		w = withoutArticle(w[1:])
		l.From = point.WithPole(strings.Join(w, " "))
		for i := 1; i+1 < len(w); i++ {
			if to, ok := toldcells.BehindLead(strings.Join(w[i:], " ")); ok {
				l.From, l.To = point.WithPole(strings.Join(w[:i], " ")), point.WithPole(to)
				break
			}
		}
		if aside != "" {
			l.Cells = append(l.Cells, aside)
		}
	}
}

// comesFrom reports whether a word stands before the near end, those of the Romance languages that also join words among them.
func comesFrom(w string) bool {
	switch w = table.Fold(w); w {
	case "de", "du", "des", "del", "da", "do", "dalla", "dallo", "dall": // from memory, no source
		return true
	}
	return words.ComesFrom(w)
}

// withoutArticle takes an article off the front of some words, "la barre de terre".
func withoutArticle(w []string) []string {
	if len(w) > 1 && len(w[0]) > 1 && words.IsArticle(strings.ToLower(w[0])) {
		return w[1:]
	}
	return w
}
