package freeword

import (
	"slices"
	"strings"

	"contralay/model/wirelist/pinword"
)

// A phrase denies that a cavity has a use: a word of denial and behind it what is denied, "not allocated", "nicht zugeordnet",
// "sans fonction". The word for a cavity may stand before it, "pin not used", and one for how long, "currently not used".
// Common words of many languages, from memory, no source.

// denials are the words of denial.
var denials = setOf(`not no without non nicht keine kein ohne pas sans sin senza sem nao niet geen zonder nie bez ne ni nije ej inte ikke ingen
	utan uden uten ei nincs nem nu fara не без нема δεν μη χωρις χωρίς`)

// allocations are the beginnings of what is denied where nobody has planned anything: of a cavity a wire, of a wire a colour.
var allocations = strings.Fields(`allocated assigned allocation assignment
	zugeordnet zugewiesen zugeteilt vergeben zuordnung
	attribue affecte assigne alloue affectation
	asignad asignar atribuid asignacion
	assegnat attribuit assegnazione
	alocad atribuicao
	toegewezen toegekend toewijzing
	przypisan przydzielon
	prirazen priraden pridelen
	tilldel tildel
	maaritett kiosztva
	alocat atribuit dodijeljen dodeljen
	назначен призначен εκχωρημεν εκχωρημέν`)

// uses are the beginnings of what is denied of a cavity that is for nothing.
var uses = strings.Fields(`occupied utilised utilized used populated equipped function
	verwendet besetzt belegt genutzt benutzt bestuckt funktion belegung
	occupe utilise fonction ocupad utilizad usad funcion occupat utilizzat usat funzione funcao
	bezet gebruikt functie zajet uzywan funkcj obsazen pouzit funkc
	anvand utnyttja brukt brugt benytt funksjon kaytoss toiminto funkcioj hasznalt folosit
	задействован занят используется задіян функци функці χρησιμοποιειται λειτουργια λειτουργία`)

// connections are the beginnings of what is denied where no wire is. "Not yet connected" is a wire that somebody still has to connect.
var connections = strings.Fields(`connected wired connection angeschlossen verbunden beschaltet anschluss branche raccorde connecte conectad
	ligad collegat conness cablat aangesloten podlaczon zapojen ansluten inkoppla tilkoble tilslutt kytkett bekotve conectat
	подключен συνδεδεμεν συνδεδεμέν`)

var allocationsByFirst, usesByFirst, connectionsByFirst = sorted(allocations), sorted(uses), sorted(connections)

// formEnds are the endings of forms of these words.
var formEnds = strings.Fields(`s e es ee ees a o as os i y n t d en et na no ny ne at ad ade va an in ain ty tu u ia ο α η ό ή
	а о ы и й ий`)

// meantime are words that say for how long, or where: the denial holds all the same. notYet are those that say that it is to change.
var (
	meantime = setOf(`currently presently now here normally internally intentionally derzeit zurzeit momentan aktuell hier intern
		actuellement ici actualmente attualmente momenteel obecnie zatim atualmente toistaiseksi jelenleg in se est esta je jest пока`)
	notYet = setOf("yet noch encore aun ancora nog jeszcze ainda annu endnu enda")
)

// leadsDenial are the words that such a phrase begins with, longestDenial is how long one is, in bytes (no source).
var leadsDenial = func() map[string]bool {
	all := map[string]bool{}
	for _, of := range []map[string]bool{denials, meantime, notYet, cavityToo} {
		for w := range of {
			all[w] = true
		}
	}
	return all
}()

const longestDenial = 90

// cavityToo are words for a cavity beside those of pinword, and words that point to one.
var cavityToo = setOf("contact contacts position positions way ways slot hole this the is are contatto")

// isDenied reports whether a folded text denies that a cavity has a use or a connection.
func isDenied(folded string) bool {
	first, rest, more := strings.Cut(folded, " ")
	if !more || len(folded) > longestDenial || !leadsDenial[first] && !pinword.Is(first) {
		return false // most texts
	}
	if meantime[first] && IsBlank(rest) {
		return true // "currently unused"
	}
	planned, used, connected := deniedIn(folded)
	return planned+used+connected == 1
}

// IsUnallocated reports whether a folded text says that nobody has planned what it stands for: in the place of a colour none is chosen yet.
func IsUnallocated(folded string) bool {
	switch folded {
	case "unallocated", "unassigned", "unvergeben", "unzugeordnet":
		return true
	}
	planned, used, connected := deniedIn(folded)
	return planned == 1 && used+connected == 0
}

// deniedIn counts what a text of denial denies, by what it is; all are 0 where it says something else too.
func deniedIn(folded string) (planned, used, connected int) {
	first, rest, more := strings.Cut(folded, " ")
	for more && !denials[first] && (meantime[first] || notYet[first] || cavityToo[first] || pinword.Is(first)) {
		first, rest, more = strings.Cut(rest, " ")
	}
	if !more || !denials[first] {
		return 0, 0, 0
	}
	for w := range strings.FieldsSeq(rest) {
		switch {
		case isForm(w, &allocationsByFirst):
			planned++
		case isForm(w, &usesByFirst):
			used++
		case isForm(w, &connectionsByFirst):
			connected++
		case !meantime[w] && !notYet[w]:
			return 0, 0, 0
		}
	}
	if connected > 0 && slices.ContainsFunc(strings.Fields(folded), func(w string) bool { return notYet[w] }) {
		return 0, 0, 0
	}
	return planned, used, connected
}

// isForm reports whether a word is a form of one of those whose beginnings are known.
func isForm(word string, all *byFirst) bool {
	return slices.ContainsFunc(all[word[0]], func(stem string) bool {
		end, is := strings.CutPrefix(word, stem)
		return is && (end == "" || slices.Contains(formEnds, end))
	})
}

// setOf is the set of the words of a text.
func setOf(text string) map[string]bool {
	all := map[string]bool{}
	for _, w := range strings.Fields(text) {
		all[w] = true
	}
	return all
}
