package titleline

import (
	"strings"

	"contralay/model/wirelist/table"
)

// WithoutWiring takes the words for a list, the word that joins them with a device, and the article off the front of a title. A title
// that says something else, or goes on at length, stays as it is.
//
//	Wiring of the lambda controller   Câblage du calculateur   Anschluss des Lambdareglers
func WithoutWiring(title string) string {
	const most = 4 // words of a name (no source)
	all := strings.Fields(title)
	if len(all) < 3 || len(all) > most+4 || strings.ContainsAny(title, ".;!?=") {
		return title
	}
	n := 0
	for n < len(all) && n < 2 && isWiring[table.Fold(all[n])] {
		n++
	}
	if n == 0 || !isJoin[table.Fold(all[n])] {
		return title
	}
	if table.Fold(all[n]) == "per" && isEnglishWiring[table.Fold(all[n-1])] {
		return title // "connections per string" are so many of each
	}
	n++
	for n < len(all) && isArticle[table.Fold(all[n])] {
		n++
	}
	rest := strings.Join(all[n:], " ")
	if len(all) == n || isEach[table.Fold(all[n])] || len(all)-n > most || len(rest) < 3 ||
		strings.IndexAny(rest[:1], "0123456789+-(") == 0 || SaysHarness(rest) {
		return title
	}
	return rest
}

// isWiring holds the words for what a list tells of a device, isJoin those that join them with it, isArticle its articles, folded.
// Common words, from memory, no source.
var (
	isEnglishWiring = set("wiring|wires|pinout|pinouts|pins|pin|connection|connections|hookup|assignment|list|table|diagram|terminals")
	isWiring        = set("wiring|wires|pinout|pinouts|pins|pin|connection|connections|hookup|assignment|list|table|diagram|terminals",
		"anschluss|anschlusse|anschlussbelegung|belegung|pinbelegung|verdrahtung|verkabelung|beschaltung",
		"cablage|branchement|branchements|brochage|raccordement|connexion|connexions|cableado|conexion|conexiones|conexionado",
		"cablaggio|collegamento|collegamenti|connessioni|piedinatura|ligacao|ligacoes|aansluiting|aansluitingen|bedrading",
		"anslutning|anslutningar|inkoppling|tilslutning|tilkobling|podlaczenie|polaczenia|zapojeni")
	isJoin = set("of|for|from|to|von|vom|des|der|fur|zum|zur|du|de|des|d'|del|della|dello|dei|delle|di|do|da|dos|das|van|av|till|til|for",
		"pour|para|per")
	isEach    = set("all|each|every|alle|jede|jeden|jedes|tous|toutes|chaque|todos|todas|cada|tutti|tutte|ogni|elke")
	isArticle = set("the|a|an|my|our|this|der|die|das|den|dem|des|la|le|les|l'|el|los|las|il|lo|de|het|een|of")
)
