package words

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// headThings are what a heading calls the things that wires are taken to. Common words, from memory, no source.
var headThings = setOf(`sensor sensors device devices load loads actuator actuators component components consumer consumers item part
	fuhler geber gerat sensoren gerate verbraucher aktor bauteil komponente capteur capteurs appareil actionneur composant consommateur
	organe sensore sensori dispositivo attuatore utenza utilizzatore componente carico sensores aparato actuador consumidor carga atuador
	componenten verbruiker voeler apparaat onderdeel givare enhet forbrukare komponent foler enhed forbruger
	czujnik urzadzenie odbiornik element cidlo snimac zarizeni anturi laite erzekelo senzor датчик устройство потребитель датчики`)

// headUnits are what a heading calls the unit that reads or feeds these things. Common words, from memory, no source.
var headUnits = setOf(`ecu ecm tcu vcu pdm pmu pdu mcu plc sps bcm unit module controller logger box computer board dash
	steuergerat steuergeraet motorsteuergerat steuerung regler stg modul rechner calculateur boitier ucm centralina modulo scheda
	quadro centralita unidad tarjeta central unidade placa regelapparaat besturing stuurapparaat styrenhet styrdon styreenhed styringsenhet
	sterownik sterownika sterownik modulu jednotka ohjain ohjainlaite vezerlo блок эбу контроллер`)

// HeadsThings reports whether the words of a heading name things that wires are taken to, "Sensor", "Sensor / actuator".
func HeadsThings(head []string) bool {
	return len(head) > 0 && !slices.ContainsFunc(head, func(w string) bool { return !headThings()[w] && !name.IsDeviceWord(w) })
}

// HeadsUnit reports whether the words of a heading name a control unit.
func HeadsUnit(head []string) bool {
	return slices.ContainsFunc(head, func(w string) bool { return headUnits()[w] || name.IsUnit(w) })
}

// SameNoun reports whether a text names by one word what a heading does, in the singular or the plural: "sensore", "sensori".
func SameNoun(text string, head []string) bool {
	const ending = 2 // letters that differ at most (no source)
	for _, w := range name.Words(table.Fold(text)) {
		for _, h := range head {
			if n := min(len(w), len(h)); n > ending+1 && strings.HasPrefix(w, h[:n-ending]) && max(len(w), len(h)) <= n+ending {
				return true
			}
		}
	}
	return false
}

// JoinsNouns reports whether a folded word joins two nouns of a heading or is the article behind such a word.
func JoinsNouns(w string) bool {
	switch w {
	case "the", "der", "des", "dem", "am", "de", "du", "la", "le", "les", "del", "della", "dello", "dei", "di", "da", "do", "dos", "van",
		"het", "på", "pa", "of", "on", "at", "in", "von", "den", "el", "los":
		return true
	}
	return false
}
