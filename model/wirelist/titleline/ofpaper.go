package titleline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// IsOfPaper reports whether a line says what the whole list is of, for whom or by whom, and nothing else. It never names a connector.
//
//	Vehicle: milk float        Kunde: Meier        Projet Héron        Drawing no. 4471-2        Order 4471 - Jansen
func IsOfPaper(text string) bool {
	const most = 80 // bytes (no source)
	if len(text) > most || text == "" {
		return false
	}
	w := fieldsOf(text)
	if len(w) < 2 || slices.ContainsFunc(w, IsPlug) || Piece(text) != "" {
		return false
	}
	if label, rest, ok := strings.Cut(text, ":"); ok && strings.TrimSpace(rest) != "" {
		l := fieldsOf(label)
		return len(l) > 0 && len(l) < 4 && (isProject[l[0]] || isLabel[l[0]]) &&
			!slices.ContainsFunc(l[1:], func(s string) bool { return !isNo[strings.Trim(s, ".")] && !isLabel[s] && !isBeforeJob[s] })
	}
	if isProject[w[0]] || isDrawing[w[0]] && isNo[w[1]] && len(w) > 2 && strings.ContainsAny(w[2], "0123456789") {
		return true
	}
	if hasDateWithin(text) && !slices.ContainsFunc(w, isDesignator) {
		return true // "Heron 12/03/2024 J. Smith"
	}
	job, _, ok := strings.Cut(strings.NewReplacer(" – ", " - ", " — ", " - ").Replace(text), " - ")
	return ok && IsJob(job)
}

// The words for a project, and those that lead the name of a vehicle, a customer, a drawing or a person, folded. Common words, from memory,
// no source.
var (
	isProject = set("project|projekt|projet|proyecto|progetto|projeto|prosjekt|projekti|проект|проєкт")
	isDrawing = set("drawing|drg|dwg|zeichnung|zeichnungsnr|plan|dessin|plano|dibujo|disegno|tekening|ritning|tegning|rysunek")
	isLabel   = set("customer|client|owner|vehicle|car|boat|machine|aircraft|chassis|vin|reg|registration|drawing|drg|dwg|author|engineer",
		"title|name|builder|company|kunde|auftraggeber|besitzer|fahrzeug|wagen|maschine|anlage|boot|zeichnung|bearbeiter|firma|titel",
		"vehicule|voiture|bateau|engin|proprietaire|dessin|auteur|societe|cliente|vehiculo|coche|barco|maquina|plano|autor|empresa|titulo",
		"veicolo|macchina|barca|disegno|autore|ditta|titolo|veiculo|carro|desenho|klant|voertuig|auto|machine|tekening|opsteller|bedrijf",
		"kund|fordon|ritning|kunde|koretoj|kjoretoy|tegning|klient|pojazd|rysunek|zakaznik|vozidlo|vykres|asiakas|ajoneuvo")
)

// A heading of the cavities may name the device that the title has too, in a piece of its own beside the vehicle: the device is the
// connector. A title that is the name of that device and more stays the name.
//
//	Race boat - ECU outputs    above "ECU pin"         ECU
//	Fuse board FB2             above "Fuse"            Fuse board FB2
//	Milk float - ECU plug B    above "ECU pin"         ECU plug B
//	Autopilot to ESCs          above "Autopilot pin"   Autopilot

// OfHeading is the name of the connector whose title and heading name one device, and what of the title is left over.
func OfHeading(title, of string) (called string, over []string) {
	pieces := piecesOf(title)
	if len(pieces) == 0 || isOwnDesignator(strings.TrimRight(strings.SplitN(pieces[0], " ", 2)[0], ",:")) {
		return title, nil
	}
	if rest, ok := strings.CutPrefix(table.Fold(title), table.Fold(of)+" "); ok && isToward[strings.SplitN(rest, " ", 2)[0]] {
		return of, []string{title}
	}
	device := wordsOf(of)
	for _, p := range pieces {
		all := wordsOf(p)
		if len(device) == 0 || slices.ContainsFunc(device, func(s string) bool { return !slices.Contains(all, s) }) {
			continue
		}
		more := slices.DeleteFunc(all, func(s string) bool { return slices.Contains(device, s) || isOutputs[s] || isWiring[s] })
		switch {
		case len(more) == 0:
			return of, []string{title}
		case len(pieces) > 1 && slices.ContainsFunc(more, IsPlug):
			return p, []string{title}
		case len(pieces) > 1 && table.Fold(p) != table.Fold(pieces[0]):
			return of, []string{title}
		}
	}
	return title, nil
}

// isToward holds the words between the two ends of a run. Common words, from memory, no source.
var isToward = set("to|->|→|nach|zu|vers|hacia|verso|naar|till|til|do|para")

// isOutputs holds the words for what a device has that a list is of, folded. Common words, from memory, no source.
var isOutputs = set("output|outputs|input|inputs|io|signals|loads|ausgang|ausgange|eingang|eingange|sorties|sortie|entrees",
	"channel|channels|salidas|entradas|uscite|ingressi|saidas|uitgangen|ingangen|utgangar|ingangar|udgange|indgange|wyjscia|wejscia")
