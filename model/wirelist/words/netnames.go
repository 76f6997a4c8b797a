package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// What headings say of two columns that both tell what a wire is: the name of its net, and a text about it. From memory, no source.

// SaysNameOfNet reports whether a heading says that the names of nets stand below it.
func SaysNameOfNet(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "signal", "signal name", "net", "net name", "pin name", "signalname", "name", "signal id", "nom", "nombre", "nome", "signaal":
		return true
	}
	return SaysShortName(head)
}

// SaysShortName reports whether a heading says that short forms stand below it: beside the cavities of a device and a text about each they
// are the names of its nets.
func SaysShortName(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "symbol", "mnemonic", "short name", "shortname", "short form", "abbreviation", "abbr", "abbrev", "acronym", "kurzel", "kurzname",
		"kurzzeichen", "kurzbezeichnung", "abkurzung", "abk", "symbole", "abreviation", "abrege", "sigle", "sigla", "simbolo",
		"abreviatura", "abbreviazione", "abreviacao", "afkorting", "symbool", "skrot", "zkratka", "forkortelse", "forkortning", "lyhenne":
		return true
	}
	return false
}

// SaysDesignation reports whether a heading is of what something is called or of a text about it: only its cells tell which.
func SaysDesignation(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "designation", "bezeichnung", "label", "marking", "beschriftung", "kennzeichnung", "designacion", "denominazione", "designazione",
		"aanduiding", "oznaczenie", "oznaceni", "beteckning", "betegnelse", "designacao", "repere", "marquage":
		return true
	}
	return false
}

// IsDescription reports whether a heading says that a text about each row stands below it.
func IsDescription(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "description", "desc", "descr", "pin description", "signal description", "beschreibung", "descripcion", "descrizione",
		"omschrijving", "opis", "popis", "beskrivning", "beskrivelse", "descricao", "kuvaus":
		return true
	}
	return false
}

// SaysUse reports whether a heading says that what each wire is for stands below it: beside its name that is a text about it.
func SaysUse(head string) bool {
	all := name.Words(table.Fold(head))
	if first, _ := functionOf(all); first {
		return true
	}
	switch strings.Join(all, " ") {
	case "function", "signal function", "pin function", "funktion", "fonction", "funcion", "funzione", "functie", "funkcja", "funkce",
		"funksjon", "funcao", "toiminto", "purpose", "use", "usage", "used for", "what it does", "what it is for", "zweck", "verwendung",
		"utilisation", "uso", "utilizzo", "long name", "full name", "langname", "langtext", "klartext", "meaning", "signal meaning",
		"bedeutung", "signification", "significado", "significato", "betekenis":
		return true
	}
	return false
}
