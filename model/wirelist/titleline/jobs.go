package titleline

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// IsJob reports whether a line says which job, order or quote the paper is of and nothing else: words for one, and then its number. It
// never names a connector.
//
//	Workshop order 2231        Job no. 14 B        Auftrag Nr. A-2231        Devis n° 77/3        Quote: Q7
func IsJob(text string) bool {
	const most = 6 // words of such a line (no source)
	w := strings.FieldsFunc(table.Fold(text), func(r rune) bool { return strings.ContainsRune(" \t:#=№()[],", r) })
	if len(w) < 2 || len(w) > most || !strings.ContainsAny(text, "0123456789") {
		return false
	}
	at := 0
	for at < len(w) && (isJobWord[strings.Trim(w[at], ".")] || isBeforeJob[strings.Trim(w[at], ".")]) {
		at++
	}
	if !slices.ContainsFunc(w[:at], func(s string) bool { return isJobWord[strings.Trim(s, ".")] }) {
		return false
	}
	for at < len(w) && isNo[strings.Trim(w[at], ".")] {
		at++
	}
	rest := w[at:]
	const few = 2 // words of a number, "14 B" (no source)
	return len(rest) > 0 && len(rest) <= few && !slices.ContainsFunc(rest, func(s string) bool { return !isReference(s) }) &&
		strings.ContainsAny(rest[0], "0123456789")
}

// isReference reports whether a word is a number or a letter with a number: "2231", "a-2231", "24/117", "b".
func isReference(w string) bool {
	const most = 14 // bytes (no source)
	letters := strings.Trim(strings.Trim(w, "0123456789./-_"), "0123456789./-_")
	return len(w) <= most && len(letters) < 4 && strings.Trim(letters, "abcdefghijklmnopqrstuvwxyz") == ""
}

// The words for what a shop is asked or paid for, those before them, and those between them and the number. Common words, from memory, no
// source.
var (
	isJobWord = set("job|order|workorder|quote|quotation|invoice|ticket|estimate|enquiry|docket|auftrag|werkstattauftrag|werkauftrag",
		"arbeitsauftrag|fertigungsauftrag|angebot|rechnung|bestellung|kommission|auftragsnummer|auftragsnr|devis|commande|facture|ordre",
		"chantier|affaire|ordine|commessa|preventivo|offerta|fattura|pedido|orden|presupuesto|factura|encomenda|orcamento|ordem|fatura",
		"opdracht|werkorder|werkbon|offerte|bestelling|factuur|arbetsorder|uppdrag|offert|faktura|tilbud|arbejdsordre|arbeidsordre",
		"zlecenie|zamowienie|oferta|zakazka|objednavka|nabidka|tilaus|tarjous|tyomaarays|munkalap|megrendeles|comanda|siparis|nalog",
		"заказ|наряд|замовлення")
	isBeforeJob = set("workshop|work|shop|repair|service|purchase|sales|customer|our|your|client|the|bon|de|du|d'ordre|del|di|da|of",
		"trabajo|travail|taller|lavoro|trabalho|servico|officina|notre|votre|unser|ihr|kunden")
	isNo = set("no|nr|num|number|ref|nummer|n|n°|no°|n°.|nº|numero|num|numer|cislo|c|id|nro|n.o|№")
)
