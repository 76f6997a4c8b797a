package words

import (
	"strings"
	"sync"

	"contralay/model/wirelist/table"
)

// IsThing reports whether a text is the name of a thing that wires are taken to, by its last word, or its first one in the languages that
// have the noun there: "pump motor", "feu avant".
func IsThing(text string) bool {
	w := strings.FieldsFunc(table.Fold(text), func(r rune) bool { return strings.ContainsRune(" -/()", r) })
	for len(w) > 1 && strings.Trim(w[len(w)-1], "0123456789lrh+") == "" {
		w = w[:len(w)-1] // "lamp 2", "lamp LH"
	}
	return len(w) > 0 && (things()[w[len(w)-1]] || romance()[w[0]])
}

// IsNet reports whether a text says what a wire carries and not where it goes: "12V", "CAN H", "sensor return".
func IsNet(text string) bool {
	for _, w := range strings.FieldsFunc(table.Fold(text), func(r rune) bool { return strings.ContainsRune(" -_/()", r) }) {
		volts := strings.TrimSuffix(strings.TrimLeft(w, "+"), "v")
		if nets()[w] || volts != strings.TrimLeft(w, "+") && volts != "" && strings.Trim(volts, "0123456789.,") == "" {
			return true
		}
	}
	return false
}

// nets are words of what wires carry. Common words, from memory, no source.
var nets = setOf(`signal sig feed supply return sense data can tx rx txd rxd pwm vcc vdd vbat vref gnd ref clock clk sda scl mosi miso cs
	enable input output in out power pwr positive negative speisung versorgung ruckleitung signalmasse daten eingang ausgang alimentation
	retour signaux donnees entree sortie alimentacion senal retorno datos entrada salida alimentazione segnale ritorno dati ingresso uscita
	voeding signaal retour ingang uitgang matning retur utgang ingang zasilanie sygnal wejscie wyjscie`)

// things are things that wires are taken to. Common words, from memory, no source.
var things = setOf(`motor motors pump lamp lamps light lights headlight headlamp taillight indicator flasher beacon siren horn buzzer bell
	switch button pushbutton joystick pedal sensor sender probe thermistor encoder float relay relais contactor solenoid valve injector coil heater
	fan blower compressor winch wiper actuator servo brake clutch alternator starter battery fuse fusebox breaker charger inverter controller
	radio speaker microphone display gauge meter tachometer camera antenna led strip stud chassis frame ground earth busbar socket
	pumpe leuchte licht scheinwerfer blinker hupe summer klingel schalter taster geber fuhler schutz magnetventil ventil lufter heizung
	geblase kompressor winde wischer bremse kupplung anlasser lichtmaschine batterie sicherung lautsprecher anzeige kamera masse karosserie
	motorer pomp zoemer schakelaar knop voeler klep verwarming ventilator rem accu zekering luidspreker scherm massa
	pumpen lampa lampor brytare knapp givare ventil flakt varmare batteri sakring hogtalare jord
	pompa silnik lampka zarowka przelacznik przycisk czujnik przekaznik zawor wentylator grzalka akumulator bezpiecznik glosnik masa`)

// romance are such things in languages that have the noun before what it is of.
var romance = setOf(`moteur pompe feu feux phare lampe clignotant klaxon avertisseur bouton interrupteur capteur sonde relais electrovanne
	ventilateur chauffage frein embrayage demarreur alternateur batterie fusible ecran
	motor bomba lampara luz luces faro intermitente bocina zumbador pulsador interruptor boton sensor sonda rele valvula electrovalvula
	ventilador calefactor freno embrague arranque alternador bateria fusible altavoz pantalla
	motore pompa lampada luce luci faro freccia clacson pulsante interruttore sensore sonda rele valvola elettrovalvola ventola
	riscaldatore freno frizione avviatore alternatore batteria fusibile altoparlante schermo
	lanterna buzina botao ventoinha sirene embreagem fusivel parafuso caixa painel boitier borne caja tornillo scatola vite centralina
	centralita calculateur bullone`)

// setOf is the set of the words of a text. Nothing writes it.
func setOf(text string) func() map[string]bool {
	return sync.OnceValue(func() map[string]bool {
		all := map[string]bool{}
		for _, w := range strings.Fields(text) {
			all[w] = true
		}
		return all
	})
}
