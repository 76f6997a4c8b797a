package tail

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the wires of a job card often stands what the job took: parts with their prices, hours with what was done in them. These rows
// fall under the headings of the wires and are none.
//
//	No   Circuit       From       To          Size
//	W1   Charge feed   REG pin 1  BATT pin +  4 mm2
//
//	PARTS USED
//	1    relay can     12.50
//
//	LABOUR
//	2 h  strip, refit  90.00

// IsBill reports whether a row below a list is of such a bill: it has a price or hours, or its title says that it is one, and it has no
// colour, no size and no end of a wire. A column that has numbers like prices above as well, "1.05" for connector and pin, has ends.
func IsBill(cols []shape.Column, above []table.Row, r table.Row, title string) bool {
	titled := TitlesBill(title)
	bill := titled
	for i, cell := range r.Cells {
		if cell == "" || i >= len(cols) {
			continue
		}
		of := cols[i].Field
		priced := func(r table.Row) bool { return i < len(r.Cells) && isPrice(r.Cells[i]) }
		if isHours(cell) || priced(r) && (titled && of == name.FieldGauge || !slices.ContainsFunc(above, priced)) {
			bill = bill || of != name.FieldGauge && of != name.FieldLength && of != name.FieldCurrent && of != name.FieldFuse
			continue
		}
		switch of {
		case name.FieldColour:
			if _, ok := value.ParseColour(cell, ""); ok {
				return false
			}
		case name.FieldGauge:
			if g, ok := value.ParseGauge(cell, value.BareAWG, value.MarkUnknown); ok && g.Size != "" {
				return false
			}
		case name.FieldFrom, name.FieldTo, name.FieldRun, name.FieldFromPin, name.FieldToPin:
			if _, pin, ok := name.SplitEnd(cell); !titled || ok && name.IsCavity(pin) {
				return false
			}
		}
	}
	return bill
}

// EndsBill reports whether a bill ends right above a row, with no gap between the two: the line is that of the last row that was taken
// out of the list.
func EndsBill(aside []table.Row, line int) bool {
	return len(aside) > 0 && aside[len(aside)-1].Line == line-1
}

// isPrice reports whether a text is a price: a number with two decimals, or one with the sign of a currency: "12.50", "1 250,00", "£12".
func isPrice(text string) bool {
	bare := strings.Trim(text, " £$€¥")
	for _, sign := range []string{"EUR", "USD", "GBP", "CHF", "Euro", "euros", "kr", "zł", "Kč"} {
		bare = strings.Trim(strings.TrimSuffix(strings.TrimPrefix(bare, sign), sign), " ")
	}
	if bare == "" || strings.Trim(bare, "0123456789.,' ") != "" || bare[0] < '0' || bare[0] > '9' {
		return false
	}
	n := len(bare)
	return bare != text || n > 3 && (bare[n-3] == '.' || bare[n-3] == ',')
}

// isHours reports whether a text is how long work took: "5.5 h", "2 hrs", "40 min", "1½ Std".
func isHours(text string) bool {
	unit := strings.TrimLeft(strings.TrimSpace(text), "0123456789.,½¼¾:")
	if unit == text || unit == "" {
		return false
	}
	switch strings.TrimRight(table.Fold(strings.TrimSpace(unit)), ".") {
	case "h", "hr", "hrs", "hour", "hours", "min", "mins", "minutes", "std", "stunde", "stunden", "heure", "heures", "hora", "horas", "ora",
		"ore", "uur", "uren", "tim", "timmar", "timer", "hod", "godz", "day", "days", "tag", "tage", "jour", "jours", "dias", "giorni":
		return true
	}
	return false
}

// TitlesBill reports whether a text is the title of a bill: every word of it is of parts, work, costs or tools, or joins those.
func TitlesBill(title string) bool {
	says := false
	for _, w := range name.Words(table.Fold(title)) {
		switch {
		case slices.Contains(billWords(), w):
			says = true
		case !slices.Contains(billJoins(), w):
			return false
		}
	}
	return says
}

// billWords are words for parts, work, costs and tools, folded. From memory, no source.
func billWords() []string {
	return strings.Fields(`parts material materials consumables sundries labour labor work hours time times cost costs price prices bill
		invoice charges tools teile ersatzteile kleinteile verbrauchsmaterial arbeit arbeiten arbeitszeit arbeitszeiten arbeitsstunden
		stunden lohn kosten rechnung preise werkzeug werkzeuge pieces fournitures materiel materiaux oeuvre travail travaux heures temps
		cout couts prix facture outils outillage piezas repuestos materiales obra trabajo trabajos horas tiempo coste costes precios
		factura herramientas pezzi ricambi materiali lavoro lavori manodopera ore costi prezzi fattura attrezzi utensili onderdelen
		materiaal arbeid arbeidsloon uren gereedschap reservdelar delar arbete timmar kostnader verktyg reservedele arbejde
		omkostninger dily materialu prace hodiny naklady naradi czesci materialy robocizna praca godziny koszty narzedzia pecas materiais
		trabalho ferramentas`)
}

// billJoins are words that stand between those or say what was done with the parts.
func billJoins() []string {
	return strings.Fields(`and of for the used fitted needed supplied new spare und verwendet verwendete verbraucht neu et de d des la
		main utilisees y mano usadas e di usati en gebruikte och og nahradni pouzite a i zuzyte`)
}
