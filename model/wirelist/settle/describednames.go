package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// describedNames takes a column that describes what another one names for notes: the short name is that of the net, where each
// cavity with a description has one.
//
//	Pin | Signal name | Description
//	1   | X_CS0       | select of the first drum
func (l *Look) describedNames() {
	signal := l.Holds(l.Cols, name.FieldSignal)
	if signal < 0 || !saysNameOfNet(l.Cols[signal].Head) {
		return
	}
	for i := signal + 1; i < len(l.Cols); i++ {
		c := &l.Cols[i]
		if c.Field != name.FieldSignal || c.Given || l.Prof[i].Filled == 0 || l.Prof[i].Sized > 0 || !isDescription(c.Head) {
			continue
		}
		if !slices.ContainsFunc(l.Src.Rows, func(r table.Row) bool {
			return i < len(r.Cells) && !shape.IsText(r) && !value.IsNothing(r.Cells[i]) && value.IsNothing(r.Cells[signal])
		}) {
			c.Field = name.FieldNote
		}
	}
}

// saysNameOfNet reports whether a heading says that the names of nets stand below it.
func saysNameOfNet(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "signal", "signal name", "net", "net name", "pin name", "signalname", "name", "signal id", "nom", "nombre", "nome", "signaal":
		return true
	}
	return false
}

// isDescription reports whether a heading says that a text about each row stands below it.
func isDescription(head string) bool {
	switch strings.Join(name.Words(table.Fold(head)), " ") {
	case "description", "desc", "descr", "pin description", "signal description", "beschreibung", "descripcion", "descrizione",
		"omschrijving", "opis", "popis", "beskrivning", "beskrivelse", "descricao", "kuvaus":
		return true
	}
	return false
}
