package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// SaysNameOfNet reports whether a heading says that the names of nets stand below it.
func SaysNameOfNet(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "signal", "signal name", "net", "net name", "pin name", "signalname", "name", "signal id", "nom", "nombre", "nome", "signaal":
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
