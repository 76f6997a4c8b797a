package words

import (
	"strings"

	"contralay/model/wirelist/name"
)

// languages adds the headings of lists in further languages. A row is a language, a field, and its words
// without marks on their letters, as table.Fold writes them. From memory, no source.
//
// A shop whose language or whose word is not here says it in a recipe, [columns] "Zyla" = "wire".
func languages(add func(f name.Field, lang string, words ...string)) {
	for _, row := range [][3]string{
		// short forms, as heads of narrow columns have them
		{"it", "gauge", "sez"}, {"it", "length", "lungh|lung"}, {"it", "colour", "col"}, {"fr", "gauge", "sect"}, {"fr", "colour", "coul"},
		{"es", "gauge", "secc"}, {"de", "gauge", "querschn|quersch|quer|qs"},
		{"de", "note", "bem|anm"}, {"de", "signal", "fkt|funkt"},
		{"", "note", "rem|rmk|rmks"}, {"", "signal", "sig|sgnl"}, {"", "length", "lgth|lngth|lth"}, {"", "connector", "cn"},
		{"pl", "gauge", "przekr"}, {"pl", "length", "dl"}, {"pl", "colour", "kol"}, {"", "pin", "term|term no|cav no"},
		{"pl", "wire", "przewod|nr przewodu|numer przewodu|zyla"},
		{"pl", "from", "od|skad|poczatek"}, {"pl", "to", "do|dokad|koniec"},
		{"pl", "pin", "styk|nr styku|zacisk|nozka"}, {"pl", "connector", "zlacze|wtyczka|wtyk|urzadzenie"},
		{"pl", "signal", "sygnal|funkcja|opis|nazwa|przeznaczenie"}, {"pl", "gauge", "przekroj"}, {"pl", "colour", "kolor|barwa"},
		{"pl", "length", "dlugosc"}, {"pl", "current", "prad"}, {"pl", "fuse", "bezpiecznik"}, {"pl", "note", "uwagi|uwaga"},
		{"nl", "wire", "draad|draadnummer|ader nr"}, {"nl", "from", "van"}, {"nl", "to", "naar"},
		{"nl", "pin", "aansluiting|klem"}, {"nl", "connector", "stekker|apparaat"}, {"nl", "signal", "functie|omschrijving|signaal|naam"},
		{"nl", "gauge", "doorsnede|draaddoorsnede"}, {"nl", "colour", "kleur|draadkleur"}, {"nl", "length", "lengte"},
		{"nl", "current", "stroom"}, {"nl", "fuse", "zekering"}, {"nl", "note", "opmerking|opmerkingen"},
		{"cs", "wire", "vodic|cislo vodice|drat"}, {"cs", "from", "z|odkud"}, {"cs", "to", "kam"},
		{"cs", "pin", "vyvod|svorka|kontakt c"}, {"cs", "connector", "konektor|zarizeni"}, {"cs", "signal", "funkce|popis|nazev"},
		{"cs", "gauge", "prurez"}, {"cs", "colour", "barva"}, {"cs", "length", "delka"}, {"cs", "current", "proud"},
		{"cs", "fuse", "pojistka"}, {"cs", "note", "poznamka|poznamky"},
		{"sv", "wire", "ledning|ledare|kabelnr|ledningsnummer"}, {"sv", "from", "fran"}, {"sv", "to", "till"},
		{"sv", "pin", "stift|plint"}, {"sv", "connector", "kontaktdon|kontakt"}, {"sv", "signal", "funktion|beskrivning|namn"},
		{"sv", "gauge", "area|ledararea"}, {"sv", "colour", "farg"}, {"sv", "length", "langd"}, {"sv", "current", "strom"},
		{"sv", "fuse", "sakring"}, {"sv", "note", "anmarkning|kommentar"},
		{"da", "from", "fra"}, {"da", "to", "til"}, {"da", "colour", "farve|farge"}, {"da", "gauge", "tverrsnitt|tvaersnit"},
		{"da", "length", "laengde|lengde"}, {"da", "fuse", "sikring"}, {"da", "signal", "beskrivelse|navn|funksjon"},
		{"da", "note", "merknad|bemaerkning"}, {"da", "wire", "leder|ledningsnr"},
		{"pt", "wire", "fio|numero do fio|condutor"}, {"pt", "from", "origem"}, {"pt", "to", "para"}, {"pt", "pin", "pino|terminal no"},
		{"pt", "connector", "ficha|dispositivo"}, {"pt", "signal", "funcao|descricao|sinal|nome"}, {"pt", "gauge", "seccao|bitola|secao"},
		{"pt", "colour", "cor"}, {"pt", "length", "comprimento"}, {"pt", "current", "corrente"}, {"pt", "fuse", "fusivel"},
		{"pt", "note", "observacoes|obs"},
		{"fi", "wire", "johdin|johto"}, {"fi", "from", "mista|lahto"}, {"fi", "to", "mihin|minne|kohde"}, {"fi", "pin", "nasta|napa"},
		{"fi", "connector", "liitin"}, {"fi", "signal", "toiminto|kuvaus|nimi"}, {"fi", "gauge", "poikkipinta"}, {"fi", "colour", "vari"},
		{"fi", "length", "pituus"}, {"fi", "fuse", "sulake"}, {"fi", "note", "huomautus|huom"},
		{"hu", "wire", "vezetek"}, {"hu", "from", "honnan"}, {"hu", "to", "hova|hová"}, {"hu", "pin", "labszam|erintkezo|kapocs"},
		{"hu", "connector", "csatlakozo"}, {"hu", "signal", "funkcio|leiras|megnevezes"}, {"hu", "gauge", "keresztmetszet"},
		{"hu", "colour", "szin"}, {"hu", "length", "hossz"}, {"hu", "fuse", "biztositek"}, {"hu", "note", "megjegyzes"},
		{"tr", "wire", "kablo no|tel|tel no"}, {"tr", "from", "nereden|baslangic"}, {"tr", "to", "nereye|bitis"},
		{"tr", "connector", "konnektor|soket"}, {"tr", "signal", "islev|aciklama|sinyal"}, {"tr", "gauge", "kesit"}, {"tr", "colour",
			"renk"},
		{"tr", "length", "uzunluk"}, {"tr", "fuse", "sigorta"}, {"tr", "note", "notlar"},
		{"ro", "wire", "fir|nr fir"}, {"ro", "from", "de la"}, {"ro", "to", "la"}, {"ro", "signal", "functie|descriere|semnal"},
		{"ro", "gauge", "sectiune"}, {"ro", "colour", "culoare"}, {"ro", "length", "lungime"}, {"ro", "note", "observatii"},
		{"ru", "wire", "провод|номер провода"}, {"ru", "from", "откуда|от"}, {"ru", "to", "куда|до"},
		{"ru", "pin", "контакт|вывод|пин"}, {"ru", "connector", "разъем|разъём|соединитель"},
		{"ru", "signal", "сигнал|назначение|функция|цепь|название"}, {"ru", "gauge", "сечение"}, {"ru", "colour", "цвет"},
		{"ru", "length", "длина"}, {"ru", "current", "ток"}, {"ru", "fuse", "предохранитель"}, {"ru", "note", "примечание|примечания"},
		{"uk", "wire", "провід|номер проводу"}, {"uk", "from", "звідки|від"}, {"uk", "to", "куди"}, {"uk", "pin", "вивід"},
		{"uk", "connector", "роз'єм|з'єднувач"}, {"uk", "signal", "призначення|функція|коло|назва"}, {"uk", "gauge", "переріз"},
		{"uk", "colour", "колір"}, {"uk", "length", "довжина"}, {"uk", "note", "примітка|примітки"},
		{"hr", "wire", "zica"}, {"hr", "from", "iz"}, {"hr", "to", "u"}, {"hr", "pin", "kontakt br"}, {"hr", "signal", "opis|namjena"},
		{"hr", "gauge", "presjek"}, {"hr", "colour", "boja"}, {"hr", "length", "duljina|duzina"}, {"hr", "note", "napomena|napomene"},
		{"hr", "connector", "konektor"},
		{"el", "wire", "καλωδιο|καλώδιο"}, {"el", "from", "απο|από"}, {"el", "to", "προς"}, {"el", "pin", "επαφη|επαφή|ακροδέκτης"},
		{"el", "connector", "βυσμα|βύσμα|σύνδεσμος"}, {"el", "signal", "σημα|σήμα|λειτουργία|περιγραφή"},
		{"el", "gauge", "διατομη|διατομή"}, {"el", "colour", "χρωμα|χρώμα"}, {"el", "length", "μηκος|μήκος"},
		{"el", "note", "σημειώσεις|παρατηρήσεις"},
		{"ja", "wire", "線番|線番号|電線番号|配線番号"}, {"ja", "from", "接続元|始点"}, {"ja", "to", "接続先|行き先|終点"},
		{"ja", "pin", "ピン|ピン番号|端子|端子番号"}, {"ja", "connector", "コネクタ|コネクター|機器"},
		{"ja", "signal", "信号|信号名|機能|名称|用途|回路"}, {"ja", "gauge", "サイズ|線径|断面積|線サイズ"},
		{"ja", "colour", "線色|色|電線色"}, {"ja", "length", "長さ"}, {"ja", "current", "電流"}, {"ja", "fuse", "ヒューズ"},
		{"ja", "note", "備考|メモ|注記"},
		{"zh", "wire", "线号|線號|导线|电线编号"}, {"zh", "from", "起点|从|起始"}, {"zh", "to", "终点|到|去向"},
		{"zh", "pin", "针脚|引脚|管脚|针|孔位|脚位"}, {"zh", "connector", "连接器|插头|接插件|插座"},
		{"zh", "signal", "功能|信号名|信号名称|说明|描述"}, {"zh", "gauge", "截面|截面积|线规|规格"}, {"zh", "colour", "颜色|顏色|线色"},
		{"zh", "length", "长度"}, {"zh", "current", "电流"}, {"zh", "fuse", "保险丝"}, {"zh", "note", "备注"},
		{"ko", "wire", "전선번호|배선번호"}, {"ko", "from", "출발"}, {"ko", "to", "도착|연결"}, {"ko", "pin", "핀|핀번호|단자"},
		{"ko", "connector", "커넥터"}, {"ko", "signal", "신호|신호명|기능|명칭"}, {"ko", "gauge", "굵기|단면적|규격"},
		{"ko", "colour", "색|색상|선색"}, {"ko", "length", "길이"}, {"ko", "note", "비고"},
	} {
		add(name.Field(row[1]), row[0], strings.Split(row[2], "|")...)
	}
}
