package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// A cavity of a unit may do one thing or another: the first of its functions names its wire, the others are what it could be used for.
// Words of data sheets, from memory, no source.

// firstOfAll and furtherOnes say of a function which of several it is, compounds of one word included.
var (
	firstOfAll = set(`primary main default basic base normal standard first principal principale primaire primaria primario hoofd
		glowna podstawowa pierwsza hlavni primarni huvud primar hoved ensisijainen elsodleges основная главная`)
	furtherOnes = set(`alternate alternative alternatives alt secondary second third fourth other others additional optional special further
		zweite weitere zusatzliche alternativen secondaire seconde autre autres supplementaire secundaria alternativa otra otras adicional
		secondaria altra altre alternatieve tweede alternatywna dodatkowa druga alternativni dalsi alternativ anden annen vaihtoehtoinen
		альтернативная дополнительная`)
	functions = set(`function functions funktion funktionen fonction fonctions funcion funciones funzione funzioni functie functies funkcja
		funkcje funkce funkcia funksjon funcao funcoes toiminto funkcio функция`)
	firstCompounds = set(`hauptfunktion grundfunktion primarfunktion standardfunktion erstfunktion hoofdfunctie huvudfunktion hovedfunktion
		hovedfunksjon paatoiminto`)
	furtherCompounds = set(`nebenfunktion nebenfunktionen alternativfunktion alternativfunktionen zweitfunktion zusatzfunktion
		zusatzfunktionen sekundarfunktion sonderfunktion sonderfunktionen nevenfunctie alternativfunksjon bifunktion`)
)

// functionOf reports whether the folded words of a heading are of a function of the cavity, the first one or a further one: "Primary
// function", "Fonction alternative 2", "Function 3".
func functionOf(all []string) (first, further bool) {
	if !slices.ContainsFunc(all, func(w string) bool { return functions[w] || firstCompounds[w] || furtherCompounds[w] }) {
		return false, false // most headings, and cells
	}
	all = slices.DeleteFunc(slices.Clone(all), func(w string) bool { return w == "pin" || w == "i" || w == "o" })
	number := ""
	if n := len(all); n > 1 && strings.Trim(all[n-1], "0123456789") == "" {
		number, all = all[n-1], all[:n-1]
	}
	switch len(all) {
	case 1:
		f := functions[all[0]] && number != ""
		return firstCompounds[all[0]] || f && number == "1", furtherCompounds[all[0]] || f && number != "1"
	case 2:
		of := all[0]
		if !functions[all[1]] {
			if of = all[1]; !functions[all[0]] {
				return false, false
			}
		}
		return firstOfAll[of], furtherOnes[of]
	}
	return false, false
}

// SaysFunction is what a heading of a function says: the first is the name of the wire, a further one is kept as text.
func SaysFunction(all []string) (name.Field, bool) {
	switch first, further := functionOf(all); {
	case first:
		return name.FieldSignal, true
	case further:
		return name.FieldKeep, true
	}
	return "", false
}

// SaysFurtherFunction reports whether a heading is of what a cavity could be used for beside its first function.
func SaysFurtherFunction(head string) bool {
	_, further := functionOf(name.Words(table.Fold(head)))
	return further
}

// set is the set of the words of a text.
func set(text string) map[string]bool {
	all := map[string]bool{}
	for _, w := range strings.Fields(text) {
		all[w] = true
	}
	return all
}
