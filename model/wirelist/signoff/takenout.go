package signoff

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/table"
)

// Section is a heading that takes the rows below it out of the loom, and those rows.
type Section struct{ Head, Rows []table.Row }

// TakenOut are the sections of a list of changes whose wires are to come out: none of them is a wire of the loom. A list that has
// hardly anything besides has none: it tells the loom that was taken out.
//
//	ADD
//	ECU pin 31 to boost valve pin 1, orange
//
//	TAKE OUT
//	ECU pin 17 to old valve pin 1, brown
func TakenOut(rows []table.Row) (all []Section) {
	const least = 2 // rows that stay (no source)
	stay := 0
	for i := 0; i < len(rows); {
		if !takesOut(rows[i]) || isCounted(rows, i) {
			if _, text := rows[i].Filled(); text != "" && rows[i].Level == 0 {
				stay++
			}
			i++
			continue
		}
		n := under(rows[i:])
		if n > 0 {
			all = append(all, Section{rows[i : i+1], rows[i+1 : i+1+n]})
		}
		i += 1 + n
	}
	if stay < least {
		return nil
	}
	return all
}

// isCounted reports whether a row says of one of several wires that are told one below the other that it is taken out: "wire 10: removed"
// below "wire 9: red, from X1 to X2".
func isCounted(rows []table.Row, i int) bool {
	lead, n := numberOf(rows[i])
	if lead == "" {
		return false
	}
	beside := false
	for _, k := range []int{i - 1, i + 1} {
		if k >= 0 && k < len(rows) {
			other, m := numberOf(rows[k])
			beside = beside || other == lead && m == n+k-i
		}
	}
	return beside
}

// numberOf is the word and the number that a row begins with, "wire 10: removed".
func numberOf(r table.Row) (lead string, n int) {
	_, text := r.Filled()
	w := strings.Fields(text)
	if len(w) < 3 {
		return "", 0
	}
	n, err := strconv.Atoi(strings.TrimRight(w[1], ":.)"))
	if err != nil {
		return "", 0
	}
	return table.Fold(w[0]), n
}

// WithoutTakenOut is a table without these sections.
func WithoutTakenOut(t table.Table) table.Table {
	all := TakenOut(t.Rows)
	if all == nil {
		return t
	}
	out := map[int]bool{}
	for _, s := range all {
		for _, r := range slices.Concat(s.Head, s.Rows) {
			out[r.Line] = true
		}
	}
	t.Rows = slices.DeleteFunc(slices.Clone(t.Rows), func(r table.Row) bool { return out[r.Line] })
	return t
}

// under is how many rows the heading that is the first of some stands over: to the next heading of its level, to one of other changes, to a
// text alone between rows of several cells, or to an empty line with no more of the same points behind it.
func under(rows []table.Row) (n int) {
	head := rows[0]
	wide := 0 // the most cells that a row has
	for i, r := range rows[1:] {
		filled, text := r.Filled()
		switch {
		case head.Level > 0 && (r.Level == 0 || r.Level > head.Level):
		case head.Level > 0 || r.Level > 0 || takesOut(r) || isChange(r):
			return i
		case filled == 1 && wide > 1 && text == r.Cells[0]:
			return i
		case i > 0 && r.Line > rows[i].Line+1 && !sameCount(rows[i], r):
			return i
		}
		wide = max(wide, filled)
		n = i + 1
	}
	return n
}

// sameCount reports whether two rows begin with a sign of a point, a letter or a number alike, so that they are points of one list.
func sameCount(a, b table.Row) bool {
	if a.Point || b.Point {
		return a.Point && b.Point
	}
	sign := func(r table.Row) string {
		first, _, more := strings.Cut(r.Cells[0], " ")
		bare := strings.TrimRight(first, ".)")
		if !more || bare == first || len(bare) > 2 {
			return ""
		}
		return first[len(bare):]
	}
	return sign(a) != "" && sign(a) == sign(b)
}

// takesOut reports whether a row is such a heading. What is said in one word of a wire that was deleted is one in a text alone, or with a
// colon: in the first cell of a table it may be all that is left of a row.
func takesOut(r table.Row) bool {
	said, sure := headingOf(r)
	return said != "" && (slices.Contains(takeOutWords, said) || sure && slices.Contains(takenOutWords, said))
}

// isChange reports whether a row is the heading of changes that leave wires in the loom.
func isChange(r table.Row) bool {
	said, _ := headingOf(r)
	return slices.Contains(changeWords, said)
}

// headingOf is what a short text alone in its row says, without the words that say no more than that there are wires; sure says that it
// can hardly be a cell.
func headingOf(r table.Row) (said string, sure bool) {
	n, text := r.Filled()
	const most = 60 // bytes of such a heading (no source)
	if n != 1 || text != r.Cells[0] || len(text) > most {
		return "", false
	}
	var kept []string
	for w := range strings.FieldsFuncSeq(table.Fold(text), func(c rune) bool { return strings.ContainsRune(" .:!*#-–—=_()[]/,", c) }) {
		if strings.Trim(w, "0123456789") != "" && !slices.Contains(besideWords, w) {
			kept = append(kept, w)
		}
	}
	return strings.Join(kept, " "), r.Level > 0 || len(r.Cells) == 1 || strings.HasSuffix(text, ":")
}

// The words of such headings. Common words, no source.
var (
	takeOutWords = list(`remove, removals, take out, takeout, take off, strip out, rip out, pull out, cut out, delete, deletions, removing,
		entfernen, ausbauen, ruckbau, ruckbauen, demontieren, loschen, herausnehmen, supprimer, retirer, enlever, deposer, depose,
		suppressions, togliere, rimuovere, eliminare, smontare, quitar, retirar, eliminar, desmontar, remover, usunac, wyjac, wymontowac,
		usuniecia, verwijderen, weghalen, uitbouwen, ta bort, tas bort, demontera, fjern, fjernes, ta ut, poista, poistetaan, poistettavat,
		odstranit, odebrat, vymontovat`)
	takenOutWords = list(`removed, taken out, deleted, stripped out, ripped out, cut out, no longer fitted, no longer used, obsolete,
		entfernt, ausgebaut, entfallt, entfallen, gestrichen, geloscht, supprime, supprimes, retire, retires, enleve, enleves, deposes,
		rimosso, rimossi, eliminati, tolti, quitados, retirados, eliminados, removidos, usuniete, verwijderd, vervallen, vervalt, borttaget,
		borttagna, utgar, utgatt, utgick, udgar, udgaet, slopas, slopade, skreslono, skreslone, fjernet, slettet, poistettu, odstraneno,
		zruseno`)
	changeWords = list(`add, added, additions, new, fit, fitted, install, keep, stays, change, changed, changes, move, moved, replace, reroute,
		modify, unchanged, neu, hinzufugen, einbauen, einbau, andern, andert, bleibt, umlegen, ajouter, nouveau, nouveaux, poser, garder,
		modifier, aggiungere, nuovo, nuovi, nuove, montare, tenere, modificare, anadir, agregar, nuevo, nuevos, mantener, cambiar, adicionar,
		novo, novos, manter, dodac, nowe, zostaje, zmienic, toevoegen, nieuw, blijft, wijzigen, lagg till, nytt, nya, behall, tilfoj, nye,
		lisaa, uudet, pridat, nove`)
	besideWords = strings.Fields(`the these this all wire wires line lines circuit circuits following to be from loom harness car old please
		section part list die der das diese folgende folgenden leitung leitungen adern kabel alte alten zu a les le la fil fils cable cables
		suivants da i fili cavi il dal cablaggio seguenti los las cables hilos de del os fios przewody do stare de draden kabels ledningar
		ledninger johdot vodice`)
)

func list(text string) (all []string) {
	for w := range strings.SplitSeq(text, ",") {
		all = append(all, strings.Join(strings.Fields(w), " "))
	}
	return all
}
