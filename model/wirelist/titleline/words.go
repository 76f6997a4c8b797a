package titleline

import "strings"

// The words that tell what a line above a table is, folded. Common words of each language, from memory, no source.

// isPlug holds the words for a connector, and isWall those for one in a wall that wires go through.
var (
	isPlug = set("connector|plug|socket|receptacle|header|jack|coupler|stecker|steckverbinder|buchse|kupplung|schottstecker|gegenstecker",
		"steckdose|connecteur|prise|fiche|embase|conector|clavija|enchufe|toma|connettore|spina|presa|ficha|tomada|stekker|contrastekker",
		"kontakt|kontaktdon|stik|stikprop|konnektor|plugg|liitin|pistoke|konektor|zasuvka|zastrcka|zlacze|wtyczka|wtyk|gniazdo",
		"csatlakozo|dugo|aljzat|soket|fis|priza|mufa|разъем|разъём|соединитель|роз'єм|βυσμα|コネクタ|连接器|插头|커넥터")
	isWall = set("bulkhead|feedthrough|firewall|schott|wanddurchfuhrung|spritzwand|cloison|traversee|pasamuros",
		"mamparo|passaparete|paratia",
		"anteparo|passamuro|doorvoer|schot|skott|genomforing|skot|gjennomforing|lapivienti|prepazka|pruchodka|przepust")
)

// isEnglish holds those of them that English puts behind what it is of: "header harness" is no plug called harness.
var isEnglish = set("connector|plug|socket|receptacle|header|jack|coupler|bulkhead|firewall")

// isHarness holds the words for a whole harness.
var isHarness = set("loom|harness|kabelbaum|faisceau|cablaggio|impianto|mazo|wiazka|svazek|kabelboom|kabelstam",
	"ledningsnat|chicote|johtosarja")

// isPlain holds the words that say what a connector is like, and not how it is called.
var isPlain = set("the|a|an|one|my|this|that|each|every|other|same|first|second|third|big|small|large|little|long",
	"short|round|square|new|old",
	"white|black|grey|gray|green|blue|red|yellow|brown|orange|male|female|view|face|front|back|mating|side|of|on|at|in|into|from|to|for",
	"and|or|with|looking|seen|pin|pins|way|ways|pole|poles|cavity|cavities|cav|wire|table|list|all|both|no|used|free",
	"der|die|das|ein|eine|grosser|kleiner|grosse|kleine|runder|runde|weisser|schwarzer|grauer|polig|poliger|von|am|im|an|vom|zum|ansicht",
	"blick|auf|le|la|un|une|du|de|des|au|les|gros|petit|rond|blanc|noir|gris|voies|broches|vue|el|los|las|del|al|gran|pequeno|redondo",
	"blanco|negro|pines|vias|vista|il|lo|i|gli|della|dello|dei|grande|piccolo|tondo|bianco|nero|vie|poli|o|os|as|do|da|dos|das|pinos",
	"het|een|grote|kleine|ronde|witte|zwarte|polige|pens|den|det|en|ett|stor|liten|rund|svart|vit|polig|pollig",
	"maly|duzy|bialy|czarny|pinowy|velky|cerny|bily|pinovy|unused|standard|sealed|waterproof|same|type|kind|series|pn|part|number")

// isPaper holds the words for what was done to a paper, which begin a remark of who did it or for whom.
var isPaper = set("printed|drawn|typed|written|copied|checked|reviewed|updated|amended|corrected|prepared|sketched",
	"scanned|saved|exported|built|assembled|gebaut|aufgebaut|construido|montado|costruito|montato|gebouwd|byggd|bygget|zbudowano",
	"gedruckt|gez|gezeichnet|gepruft|gepr|geschrieben|abgeschrieben|aktualisiert|geandert|bearbeitet|bearb|ausgedruckt",
	"imprime|dessine|verifie|ecrit|recopie|releve|corrige|modifie|impreso|dibujado|revisado|escrito|copiado|actualizado|corregido",
	"stampato|disegnato|controllato|verificato|scritto|copiato|aggiornato|corretto|impresso|desenhado|conferido|atualizado",
	"afgedrukt|getekend|gecontroleerd|bijgewerkt|overgeschreven|utskriven|ritad|kontrollerad|uppdaterad|udskrevet|tegnet|tegnad|skrevet",
	"opdateret|wydrukowano|narysowal|narysowano|sprawdzil|sprawdzono|vytisteno|nakreslil|zkontroloval|tulostettu|piirsi|tarkisti")

// isThingBuilt holds those that begin the name of a thing: "built in radio".
var isThingBuilt = set("built in|built up")

// isForWhom holds the words behind one of those: "printed for Nigel", "gez. von Brandl".
var isForWhom = set("for|by|from|on|at|off|out|down|up|in|with|after|fur|von|am|aus|nach|pour|par|le|chez|d'apres|para",
	"against|gegen|contre|contra|contro|tegen|mot|imod|proti",
	"por|el|en|per|da|il|di|dal",
	"voor|door|op|uit|for|af|av|til|till|fran|den|dla|przez|z|pro|dne|od|again|today|twice|and|late|last")

// isList holds the words for a list, which begin a remark of what it is for.
var isList = set("list|notes|sheet|copy|liste|notizen|zettel|lista|notas|hoja|nota|foglio|elenco|appunti|lijst",
	"notities|anteckningar|noter",
	"seznam|spis|luettelo|liste|feuille|copie|copia|kopie|kopia|page|pagina|seite|draft|entwurf|brouillon|borrador|bozza|rascunho")

// isUse holds the words between a list and what it is for.
var isUse = set("for|of|from|to|by|fur|vom|von|zum|zur|aus|pour|de|du|des|para|del|por|per|di|da|do|dei|voor|van",
	"for|till|til|av|af|do|dla|pro")

// isDay holds the days of the week, long and short.
var isDay = set("monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun",
	"montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonnabend|sonntag|mo|di|mi|do|fr|sa|so",
	"lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche|lunes|martes|miercoles|jueves|viernes|sabado|domingo",
	"lunedi|martedi|mercoledi|giovedi|venerdi|sabato|domenica|maandag|dinsdag|woensdag|donderdag|vrijdag|zaterdag|zondag",
	"mandag|tisdag|onsdag|torsdag|fredag|lordag|sondag|tirsdag|sondag|poniedzialek|wtorek|sroda|czwartek|piatek|sobota|niedziela",
	"pondeli|utery|streda|ctvrtek|patek|nedele|maanantai|tiistai|keskiviikko|torstai|perjantai|lauantai|sunnuntai")

// isTime holds the words for a time of the day, behind a day: "tues night".
var isTime = set("night|morning|evening|afternoon|late|early|noon|eve|abend|nacht|morgen|nachmittag|vormittag|abends|soir|matin|nuit",
	"noche|manana|tarde|sera|mattina|notte|noite|manha|avond|ochtend|middag|kvall|natt|aften|nat|wieczor|rano|vecer|noc|ilta")

// isDate holds the words before a date, "Stand 04.02.", and isRevision those before a letter or a number alone, "Rev C".
var (
	isDate = set("stand|date|dated|datum|datei|state|status|etat|fecha|data|estado|stato|per|dato|dat|rev|revision|ver|version|issue",
		"ausgabe|index|indice|edition|edicion|edizione|versie|utgava|udgave|wersja|verze|revisie|stan|stav")
	isRevision = set("rev|revision|ver|version|issue|ausgabe|index|indice|edition",
		"edicion|edizione|versie|utgava|udgave|wersja|verze|revisie")
)

// isThing holds the words that tell a person to do something and that things are called by as well: "check valve", "return line".
var isThing = set("check|test|order|return|watch|replace|swap|call|note|see")

// isOrder holds the words that tell a person to do something, or lead what is not to be forgotten.
var isOrder = set("ring|call|ask|phone|buy|order|get|fetch|bring|borrow|return|tell|remember|remind|mind|beware",
	"careful|watch|see|note|notes|nb",
	"todo|caution|warning|attention|check|test|swap|replace|achtung|vorsicht|hinweis|fragen|anrufen|kaufen|bestellen|besorgen|merke",
	"attention|demander|appeler|acheter|commander|penser|voir|ojo|cuidado|comprar|llamar|preguntar|pedir|atencion|attenzione|chiedere",
	"chiamare|comprare|ordinare|ricordare|atencao|ligar|perguntar|cuidado|pas|let|bellen|kopen|bestellen|vragen|obs|kom|kop|fraga|ring",
	"kob|husk|sporg|uwaga|kupic|zapytac|pozor|koupit|zeptat|huom|muista|osta|figyelem|dikkat")

// isSmall holds the words of a sentence that no name of a connector has behind its first one.
var isSmall = set("re|about|for|if|when|before|after|more|the|some|him|her|them|me|us|it|that|this|not|dont|don't|is",
	"are|was|with|off|again",
	"noch|mehr|wegen|ob|wenn|vor|nicht|alle|mit|die|den|das|ihn|sur|pour|si|plus|avec|avant|les|le|que|mas|por|para|antes|si|con",
	"piu|per|se|prima|che|gli|mais|para|se|que|meer|voor|niet|of|met|nog|op|mer|om|till|inte|mere|ikke|med|jesli|wiecej|nie|vice|kdyz",
	"all|every|each|both|here|there|todos|todas|tous|tutti|alla|alle")

// isAll holds the words that begin what is said of all rows: "all awg", "alle Maße in mm".
var isAll = set("all|every|everything|alle|alles|tous|toutes|tout|todos|todas|todo|tutti|tutte|tutto|alla|allt|alt|wszystkie",
	"vse|vsechny|kaikki|minden|sizes")

// isUnit holds the units that it is said of, and the words for wires.
var isUnit = set("awg|ga|gauge|mm|mm2|mm²|qmm|mmq|sqmm|cm|m|inch|inches|ft|metres|meters",
	"wire|wires|adern|leitungen|fils|cables|cavi|hilos|fios|draden|ledningar")

// isVerb holds the verbs that make a sentence of a line.
var isVerb = set("is|are|was|has|have|goes|ist|sind|est|sont|tiene|sono")

// set makes a look-up of words set off by strokes.
func set(lines ...string) map[string]bool {
	all := map[string]bool{}
	for _, l := range lines {
		for w := range strings.SplitSeq(l, "|") {
			all[w] = true
		}
	}
	return all
}
