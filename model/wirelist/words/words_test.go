package words_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// The plain words of each language for what a list of wires has, written as people write them: from a dictionary, common words.
func TestHeadingsOfLanguages(t *testing.T) {
	fields := []name.Field{name.FieldFrom, name.FieldTo, name.FieldPin, name.FieldConnector, name.FieldSignal, name.FieldColour,
		name.FieldGauge, name.FieldLength, name.FieldNote, name.FieldFuse, name.FieldWire}
	for lang, heads := range map[string]string{
		"de": "von|nach|Klemme|Stecker|Funktion|Farbe|Querschnitt|Länge|Bemerkung|Sicherung|Leitung",
		"fr": "Départ|Arrivée|Borne|Connecteur|Fonction|Couleur|Section|Longueur|Remarques|Fusible|Fil",
		"es": "desde|hasta|patilla|conector|función|color|sección|longitud|observaciones|fusible|hilo",
		"it": "da|a|morsetto|connettore|funzione|colore|sezione|lunghezza|nota|fusibile|filo",
		"nl": "van|naar|klem|stekker|functie|kleur|doorsnede|lengte|opmerking|zekering|ader",
		"pt": "de|para|pino|ficha|função|cor|secção|comprimento|observação|fusível|fio",
		"pl": "skąd|dokąd|zacisk|złącze|funkcja|kolor|przekrój|długość|uwagi|bezpiecznik|przewód",
		"cs": "odkud|kam|svorka|konektor|funkce|barva|průřez|délka|poznámka|pojistka|vodič",
		"sv": "från|till|stift|kontaktdon|funktion|färg|area|längd|anmärkning|säkring|ledning",
		"da": "fra|til|klemme|stik|funktion|farve|tværsnit|længde|bemærkning|sikring|leder",
		"no": "fra|til|pinne|plugg|funksjon|farge|tverrsnitt|lengde|merknad|sikring|leder",
		"fi": "mistä|mihin|nasta|liitin|toiminto|väri|poikkipinta|pituus|huomautus|sulake|johdin",
		"hu": "honnan|hová|érintkező|csatlakozó|funkció|szín|keresztmetszet|hossz|megjegyzés|biztosíték|vezeték",
		"tr": "nereden|nereye|klemens|soket|işlev|renk|kesit|uzunluk|notlar|sigorta|kablo no",
	} {
		for i, head := range strings.Split(heads, "|") {
			if got := words.Vocabulary()[table.Fold(head)].Field; got != fields[i] {
				t.Errorf("%s: %q means %q, want %q", lang, head, got, fields[i])
			}
		}
	}
}
