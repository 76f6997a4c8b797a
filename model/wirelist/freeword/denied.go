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

// uses are the beginnings of what is denied of a cavity that nothing was planned for.
var uses = strings.Fields(`allocated assigned occupied utilised utilized used populated equipped function allocation assignment
	zugeordnet zugewiesen zugeteilt vergeben verwendet besetzt belegt genutzt benutzt bestuckt funktion belegung zuordnung
	attribue affecte assigne alloue occupe utilise fonction affectation
	asignad asignar atribuid ocupad utilizad usad funcion asignacion
	assegnat attribuit occupat utilizzat usat funzione assegnazione
	alocad funcao atribuicao
	toegewezen toegekend bezet gebruikt functie toewijzing
	przypisan przydzielon zajet uzywan funkcj
	prirazen priraden pridelen obsazen pouzit funkc
	tilldel anvand utnyttja tildel brukt brugt benytt funksjon
	maaritett kaytoss toiminto kiosztva funkcioj hasznalt
	alocat atribuit folosit dodijeljen dodeljen
	назначен задействован занят используется призначен задіян функци функці
	χρησιμοποιειται εκχωρημεν εκχωρημέν λειτουργια λειτουργία`)

// connections are the beginnings of what is denied where no wire is. "Not yet connected" is a wire that somebody still has to connect.
var connections = strings.Fields(`connected wired connection angeschlossen verbunden beschaltet anschluss branche raccorde connecte conectad
	ligad collegat conness cablat aangesloten podlaczon zapojen ansluten inkoppla tilkoble tilslutt kytkett bekotve conectat
	подключен συνδεδεμεν συνδεδεμέν`)

var usesByFirst, connectionsByFirst = sorted(uses), sorted(connections)

// formEnds are the endings of forms of these words.
var formEnds = strings.Fields(`s e es ee ees a o as os i y n t d en et na no ny ne at ad ade va an in ain ty tu u ia ο α η ό ή
	а о ы и й ий`)

// meantime are words that say for how long, or where: the denial holds all the same. notYet are those that say that it is to change.
var (
	meantime = setOf(`currently presently now here normally internally intentionally derzeit zurzeit momentan aktuell hier intern
		actuellement ici actualmente attualmente momenteel obecnie zatim atualmente toistaiseksi jelenleg in se est esta je jest пока`)
	notYet = setOf("yet noch encore aun ancora nog jeszcze ainda annu endnu enda")
)

// cavityToo are words for a cavity beside those of pinword, and words that point to one.
var cavityToo = setOf("contact contacts position positions way ways slot hole this the is are contatto")

// isDenied reports whether a folded text denies that a cavity has a use or a connection.
func isDenied(folded string) bool {
	first, rest, more := strings.Cut(folded, " ")
	if more && meantime[first] && IsBlank(rest) {
		return true // "currently unused"
	}
	for more && !denials[first] && (meantime[first] || notYet[first] || cavityToo[first] || pinword.Is(first)) {
		first, rest, more = strings.Cut(rest, " ")
	}
	if !more || !denials[first] {
		return false
	}
	used, connected := 0, 0
	for w := range strings.FieldsSeq(rest) {
		switch {
		case isForm(w, &usesByFirst):
			used++
		case isForm(w, &connectionsByFirst):
			connected++
		case !meantime[w] && !notYet[w]:
			return false
		}
	}
	later := connected > 0 && slices.ContainsFunc(strings.Fields(folded), func(w string) bool { return notYet[w] })
	return used+connected == 1 && !later
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
