package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/file"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// Lists of teams and shops, and what a builder reads in them: the ends of every wire, and
// what the report must and must not say.
func TestListsOfTeams(t *testing.T) {
	const head = "Wire,From,To,AWG\n"
	for name, c := range map[string]struct {
		file, list string
		ends       string
		says       []string
		not        []string
		holds      []string // what the file of the harness holds
	}{
		"a current headed Max A": {"a.csv", "Wire,From,To,AWG,Max A\n1,ECU:1,INJ1:1,22,2\n", "ECU:1 INJ1:1", nil, []string{"several"}, nil},
		"a current headed A":     {"a.csv", "Wire,From,To,AWG,A\n1,ECU:1,INJ1:1,22,2.5\n", "ECU:1 INJ1:1", nil, []string{"warn: end"}, nil},
		"Italian sides": {"a.csv", "Filo;Da connettore;Pin;A connettore;Pin;AWG\n1;ECU;A1;INJ1;1;22\n", "ECU:A1 INJ1:1", nil, nil,
			nil},
		"Italian, one word": {"a.csv", "Filo;Da;Pin;A;Pin;AWG\n1;ECU;A1;INJ1;1;22\n", "ECU:A1 INJ1:1", nil, nil, nil},
		"Spanish cable numbers": {"a.csv", "Cable;Desde;Hasta;AWG\n12;ECU:1;BOMBA:1;20\n13;ECU:2;BOMBA:2;20\n",
			"ECU:1 BOMBA:1, ECU:2 BOMBA:2", nil, []string{"cable of one"}, nil},
		"two ends without colon": {"a.csv", head + "1,ECU.6 / ECU.7,BATT:1,12\n2,P1-13/P1-14,J1-13,20\n",
			"ECU:6 BATT:1, ECU:7 BATT:1, P1:13 J1:13, P1:14 J1:13", []string{"several cavities in one cell"}, nil, nil},
		"two ends in words": {"a.csv", head + "1,\"TPS pin 1, MAP pin 1\",ECU:5,22\n2,TPS-2 & MAP-2,ECU:6,22\n",
			"TPS:1 ECU:5, MAP:1 ECU:5, TPS:2 ECU:6, MAP:2 ECU:6", nil, nil, nil},
		"brackets and signs": {"a.csv", head + "1,P1(21),J1[21],22\n2,P1 #22,J1_22,22\n3,P1.15 (was 16),\"J1, 15\",22\n",
			"P1:21 J1:21, P1:22 J1:22, P1:15 J1:15", []string{"was 16"}, []string{"end without cavity"}, nil},
		"a run in one cell": {"a.csv", "No.;From - To;AWG\n1A;ECU-A12 -> INJ1-1;22\n2;GND STAR – ECU-B1;16\n",
			"ECU:A12 INJ1:1, GND-STAR:1 ECU:B1", nil, []string{"not understood"}, nil},
		"an arrow in From":      {"a.csv", head + "1,P1:17→J1:17,,22\n", "P1:17 J1:17", nil, nil, nil},
		"a connection, one end": {"a.csv", "Pin,Connection,AWG\n1,INJ1:1,22\n2,INJ1:2,22\n", "a:1 INJ1:1, a:2 INJ1:2", nil, nil, nil},
		"a splice with its word": {"a.csv", head +
			"1,ECU:1,SPLICE S1,20\n2,SPLICE S1,INJ1:1,22\n3,Splice-S1,INJ2:1,22\n4,ECU:2,SP-2,20\n5,SP-2,INJ1:2,22\n6,SP-2,INJ2:2,22\n",
			"ECU:1 S1, S1 INJ1:1, S1 INJ2:1, ECU:2 SP-2, SP-2 INJ1:2, SP-2 INJ2:2", nil, []string{"warn"}, nil},
		"no wire, in many words": {"a.csv", "Pin,Wire,AWG,Destination\n1,101,20,C2-1\n2,-,-,-\n3,plug,,\n4,unused,,\n5,n/a,,\n",
			"a:1 C2:1", []string{"4 blank (2, 3, 4, 5)"}, []string{"warn"}, nil},
		"n/c is no connector": {"a.csv", head + "1,ECU:1,n/c,\n2,ECU:2,N/A,\n3,ECU:3,TPS:1,22\n", "ECU:3 TPS:1",
			[]string{"2 blank (1, 2)"}, nil, nil},
		"spare where it leads": {"a.csv",
			"Wire,From,To,AWG,Notes\n1,ECU:1,SPARE,22,\n2,ECU:2,,22,SPARE - coil & stow\n3,ECU:3,spare tail,22,\n4,ECU:4,,22,Spare. 200 " +
				"mm tail\n5,ECU:5,TPS:1,22,\n", "ECU:1, ECU:2, ECU:3, ECU:4, ECU:5 TPS:1", []string{"4 wired spare (1, 2, 3, 4)"}, nil,
			nil},
		"who drew it": {"a.csv",
			head + "1,P1:1,J1:1,22\nPrepared by: 14,Date: 12/03/24,Approved: 9,\nRev,Date,Description,By\nA,12/03/24,First " +
				"issue,KM\n", "P1:1 J1:1", []string{"about the paper: A 12/03/24 First issue KM"}, []string{"warn"}, nil},
		"who drew it, pin table": {"a.csv", "Pin,Function,AWG,To\n1,INJ1,22,J2-1\nDrawn: PJ,,,Sheet 1 of 1\n", "a:1 J2:1",
			[]string{"about the paper"}, []string{"warn"}, nil},
		"short sections": {"a.csv", head + "CABIN,,,\n1,ECU:1,DASH:1,22\nENGINE,,,\n2,ECU:2,INJ:1,22\n",
			"ECU:1 DASH:1, ECU:2 INJ:1", nil, []string{"warn"}, nil},
		"sections of a pin table": {"a.csv", "Pin,Signal,AWG,To\nECU A,,,\n1,INJ1,22,INJ1:1\nECU B,,,\n1,TPS,22,TPS:2\n",
			"ECU-A:1 INJ1:1, ECU-B:1 TPS:2", nil, []string{"warn"}, nil},
		"a total over two pages": {"a.csv", head + "1,P1:1,J1:1,22\nPage 1 of 2,,,\n" + head + "2,P1:2,J1:2,22\nTotal wires: 2,,,\n",
			"P1:1 J1:1, P1:2 J1:2", nil, []string{"warn"}, nil},
		"a title above the plug": {"a.csv",
			"Club car loom,,,\nJ1 - ECU,,,\nPin,Function,AWG,To\n1,INJ1,22,J3-1\nJ3 - INJ,,,\nPin,Function,AWG,To\n1,INJ1,22,J1-1\n",
			"J1:1 J3:1", []string{"Club car loom; taken as the name"}, []string{"warn"}, nil},
		"a title and an empty row": {"a.csv", "Club car loom,,,\n,,,\nDash plug,,,\nPin,Function,AWG,To\n1,INJ1,22,J3-1\n",
			"Dash-plug:1 J3:1", nil, []string{"warn"}, nil},
		"two tables side by side": {"a.csv", "ECU A,,,,ECU B,,\nPin,Wire,To,,Pin,Wire,To\n1,101,INJ1:1,,1,201,TPS:1\n2,102,INJ2:1,,,,\n",
			"ECU-A:1 INJ1:1, ECU-A:2 INJ2:1, ECU-B:1 TPS:1", nil, nil, nil},
		"three beside each other": {"a.csv",
			"Wire,From,To,AWG,Notes\n6,ECU:6,CAM:1,24,screened\n7,ECU:7,CAM:2,24,screened\n8,ECU:8,CAM:3,24,screened\n",
			"ECU:6 CAM:1, ECU:7 CAM:2, ECU:8 CAM:3", []string{"shielded triple of wires 6 and 7 and 8"}, nil, nil},
		"letters on one side": {"a.csv", head + "1,P1:4..6,J1:A..C,22\n", "P1:4 J1:A, P1:5 J1:B, P1:6 J1:C", nil, []string{"warn"},
			nil},
		"sizes with decimals": {"a.csv", "Wire,From,To,Size\n1,ECU:1,TPS:1,0.5\n2,ECU:2,TPS:2,0.75\n", "ECU:1 TPS:1, ECU:2 TPS:2", nil,
			[]string{"whole numbers"}, nil},
		"struck text": {"a.md", "| Wire | From | To | AWG |\n|--|--|--|--|\n| 4 | ECU.4 | ~~LAMBDA.4~~ LAMBDA.5 | 22 |\n| 5 " +
			"| ECU:7<br>ECU:8 | BAT:1 | 12 |\n| ~~6~~ | ~~ECU.9~~ | ~~X.1~~ | ~~22~~ |\n", "ECU:4 LAMBDA:5, ECU:7 BAT:1, ECU:8 BAT:1",
			[]string{`text struck out: "LAMBDA.4"`, "row struck out: 6 ECU.9 X.1 22"}, nil, nil},
		"lengths of two numbers": {"a.csv", "Wire,From,To,AWG,Length (mm)\n1,ECU:1,INJ1:1,22,600/620\n", "ECU:1 INJ1:1",
			[]string{`no length: "600/620"`}, nil, nil},
		"numbers of rows and ids": {"a.csv",
			"Pos.;Ltg.-Nr.;Von;Nach;AWG;Bemerkung\n1;W12;X1:1;X2:1;22;verdrillt mit Pos. 2\n2;W15;X1:2;X2:2;22;verdrillt mit Pos. 1\n",
			"X1:1 X2:1, X1:2 X2:2", []string{"twisted pair of wires W12 and W15"}, []string{"warn", "two columns"}, nil},
		"deleted if": {"a.csv",
			"Wire,From,To,AWG,Notes\n1,ECU:1,TPS:1,22,delete if no TPS fitted\n2,ECU:2,TPS:2,22,deleted rev C\n", "ECU:1 TPS:1",
			[]string{"row marked as deleted: 2"}, nil, nil},
		"one size, both ways": {"a.csv", "Wire,From,To,Size\n1,ECU:1,TPS:1,1.5mm² (16 AWG)\n", "ECU:1 TPS:1",
			[]string{"more than a size"}, []string{"without size", "no size"}, nil},
		"no stripe, no size": {"a.csv", "Wire,From,To,AWG,Colour,Stripe\n1,ECU:1,TPS:1,22,WHT,none\n2,ECU:2,TPS:2,22,n/a,\n",
			"ECU:1 TPS:1, ECU:2 TPS:2", nil, []string{"note", "warn"}, nil},
		"gauges below Querschnitt": {"a.csv", "Nr;Von;Nach;Querschnitt\n1;ECU:1;TPS:1;22 AWG\n2;ECU:2;TPS:2;22\n3;ECU:3;TPS:3;0,5\n",
			"ECU:1 TPS:1, ECU:2 TPS:2, ECU:3 TPS:3", []string{"AS22759/32 for 2, ISO 6722 thin for 1"}, []string{"catalogue"}, nil},
		"numbers with a zero": {"a.csv", "Wire,From,Pin,To,Pin,Size\n1.0,ECU,1.0,INJ,1.0,22.0\n2.0,ECU,2.0,INJ,2.0,16.0\n",
			"ECU:1 INJ:1, ECU:2 INJ:2", []string{"AS22759/32 for 2"}, []string{"catalogue"}, nil},
		"sections with a zero": {"a.csv", "Wire,From,Pin,To,Pin,Size\n1,ECU,1,INJ,1,1.0\n2,ECU,2,INJ,2,2.5\n",
			"ECU:1 INJ:1, ECU:2 INJ:2", []string{"ISO 6722 thin for 2"}, nil, nil},
		"wires to one stud": {"a.csv", "Wire,From,To,AWG,Signal\n1,ECU:1,G1,20,ECU gnd\n2,TPS:2,G1,22,TPS gnd\n3,RLY:30,BATT " +
			"+,12,Main\n4,FB:1,BATT +,12,Feed\n5,A:1,DASH,22,a\n6,A:2,DASH,22,b\n",
			"ECU:1 G1:1, TPS:2 G1:1, RLY:30 BATT-+:1, FB:1 BATT-+:1, A:1 DASH:1, A:2 DASH:2",
			[]string{"a stud of several wires: G1", "a device without cavities: DASH"}, []string{"stop", "two wires"}, nil},
		"size and colour in one cell": {"a.csv", "Pin,Colour/Size,Dest\n1,RED-22,INJ1-1\n2,W/R-22,INJ2-1\n3,20 BLU,TPS-1\n",
			"a:1 INJ1:1, a:2 INJ2:1, a:3 TPS:1", nil, []string{"not understood", "colour"},
			[]string{`size   = "22"`, `colour = "92"`, `size   = "20"`, `colour = "6"`}},
		"size in the colour": {"a.csv", "Wire,From,To,Colour\n1,ECU:1,INJ:1,WHT-RED 20\n", "ECU:1 INJ:1", nil,
			[]string{"without size", "no size"}, []string{`size   = "20"`, `colour = "92"`}},
		"feet and inches": {"a.csv", "Wire,From,To,AWG,Length\n1,ECU:1,INJ:1,22,\"2'-6\"\"\"\n", "ECU:1 INJ:1", nil,
			[]string{"no length"}, []string{"length_mm = 762.0"}},
		"a cable in its type": {"a.csv", "Wire,From,To,Type\n1,ECU:1,SENS:1,2-core 24 AWG screened\n2,ECU:2,SENS:2,2-core 24 AWG " +
			"screened\n3,ECU:3,,screen\n", "ECU:1 SENS:1, ECU:2 SENS:2", []string{"shielded pair of wires 1 and 2", "C1 is grounded there"},
			[]string{"warn"},
			[]string{`size = "24"`, `drain_from = "ECU:3"`}},
		"told at each end": {"a.csv", "Connector,Pin,Wire,AWG,To Connector,To Pin\nECU,1,W1,22,INJ1,1\nINJ1,1,W1,22,ECU,1\n",
			"ECU:1 INJ1:1", nil, []string{"warn"}, nil},
		"told at each end, from and to": {"a.csv", "Wire,From,To,AWG\nW1,ECU:1,INJ1:1,22\nW1,INJ1:1,ECU:1,22\n", "ECU:1 INJ1:1", nil,
			[]string{"warn"}, nil},
		"brackets beside rows": {"a.csv",
			"Pin,Signal,AWG,To,Twist\n1,A,24,DASH:1,┐\n2,B,24,DASH:2,┘\n3,C,24,CRK:1,{\n4,D,24,CRK:2,}\n",
			"a:1 DASH:1, a:2 DASH:2, a:3 CRK:1, a:4 CRK:2", []string{"twisted pair of wires 1 and 2", "twisted pair of wires 3 and 4"},
			[]string{"warn"}, nil},
		"columns of text": {"a.txt",
			"Engine loom\n\nWire  From       To       AWG  Colour\n----  ---------  -------  ---  ------\n1     ECU:1      INJ:1    22   " +
				"red\n2     ECU:2                22   blue/white\n103   Fan relay:30  FAN:1  12   black, thick\n",
			"ECU:1 INJ:1, ECU:2, Fan-relay:30 FAN:1", []string{"black, thick"}, []string{"without size"},
			[]string{`colour = "2"`, `size   = "22"`}},
		"a ground with a cavity": {"a.csv", "Signal,From,To,Size\nCoil 1 gnd,C1:1,GND1:1,20\nCoil 2 gnd,C2:1,GND1:1,20\n",
			"C1:1 GND1:1, C2:1 GND1:1", nil, []string{"stop", "warn"}, nil},
		"a shield to a cavity": {"a.csv", "Signal,From,To,Shield,Size\nCRK+,E:1,C:1,E:9,22\nCRK-,E:2,C:2,E:9,22\n",
			"E:1 C:1, E:2 C:2", []string{"shielded pair of wires 1 and 2", "shield taken to a cavity: E:9",
				"warn: a shield beside rows that name no cable: Shield: row 2, row 3"}, nil,
			[]string{"Shield: E:9"}},
		"nets called as papers are": {"a.csv",
			"Signal,From,To,AWG\nData,ECU:1,DASH:1,24\nRev,ECU:2,DASH:2,24\nDate,ECU:3,DASH:3,24\n" +
				"Issue,ECU:4,DASH:4,24\nDrawn,ECU:5,DASH:5,24\n",
			"ECU:1 DASH:1, ECU:2 DASH:2, ECU:3 DASH:3, ECU:4 DASH:4, ECU:5 DASH:5", nil, []string{"about"}, nil},
		"a day in two cells": {"a.csv", "Wire,From,To,AWG\n1,ECU:1,DASH:1,24\nDate,12/03/24,,\nRev: B,,Datum: 12.3.2024,\n",
			"ECU:1 DASH:1", []string{"about the paper"}, []string{"warn"}, nil},
		"device, plug and pin, twice": {"a.csv",
			"Device,Connector,Pin,Wire,AWG,Device,Connector,Pin\nECU,P1,1,W1,22,DASH,P5,2\nECU,P2,1,W2,22,DASH,P6,3\n",
			"ECU-P1:1 DASH-P5:2, ECU-P2:1 DASH-P6:3", nil, []string{"warn", "note"}, nil},
		"gauges with a zero": {"a.csv", "Wire,From,From Pin,To,To Pin,AWG\nW1,J1,1,J2,1,4.0\nW2,J1,2,J2,2,6.0\n",
			"J1:1 J2:1, J1:2 J2:2", []string{"AS22759/32 for 2"}, nil, []string{`size = "4"`, `size = "6"`}},
		"told at each end, without ids": {"a.csv", "From,From Pin,To,To Pin,AWG\nJ1,1,J2,1,22\nJ2,1,J1,1,22\n", "J1:1 J2:1", nil,
			[]string{"warn"}, nil},
		"made into dates": {"a.csv",
			"Wire,From,To,AWG\nW1,J1-1,01-Feb,22\nW2,J1-2,2025-02-01,22\nW3,J1-3,1E+02,22\nW4,J1-4,J2-1,22\n",
			"J1:1, J1:2, J1:3, J1:4 J2:1", []string{"what a spreadsheet made of an end: 01-Feb",
				"what a spreadsheet made of an end: 1E+02"}, nil, []string{"end: 2025-02-01"}},
		"no cavity in its column": {"a.csv",
			"Wire,From,From Pin,To,To Pin,AWG\nW7,J1,7,J2,N/A,22\nW8,J1,8,J2,A,22\nW9,J1,9,RLY,NC,22\n", "J1:7, J1:8 J2:A, J1:9 RLY:NC",
			nil, []string{"several", "two wires"}, nil},
		"one id at three ends": {"a.csv", "Connector,Pin,Function,Wire,AWG\nJ1,3,+12V,W3,20\nJ3,1,PWR,W3,20\nJ4,1,PWR,W3,20\n",
			"J1:3 S1, J3:1 S1, J4:1 S1", []string{"one wire at more than two ends: W3 3 ends"}, []string{"no far end"}, nil},
		"two poles": {"a.csv",
			"Wire,From,To,AWG\nW1,J1-1,BATT+,12\nW2,J1-2,BATT-,12\nW3,J1-3,P1--,22\nW4,J1-4,P1-+,22\nW5,J1-5,BATT-,12\n",
			"J1:1 BATT+:1, J1:2 BATT-:1, J1:3 P1:-, J1:4 P1:+, J1:5 BATT-:1", nil, []string{"warn", "stop"}, nil},
		"a shield among the cores": {"a.csv",
			"Cable,Wire,From,To,AWG,Colour\nC1,W1,J1-1,J2-1,22,WHT\nC1,W2,J1-2,J2-2,22,BLU\nC1,SHIELD,J1-3,,,\n", "J1:1 J2:1, J1:2 J2:2",
			[]string{"shielded pair of wires W1 and W2", "C1 is grounded there"}, []string{"warn"}, []string{`drain_from = "J1:3"`}},
		"a blank before the pin": {"a.csv", "Wire,From,To,AWG\nW1,J1-1,\"J2\n1\",22\nW2,J1-2,J2 8,22\nW3,J1-3,J2-9,22\n",
			"J1:1 J2:1, J1:2 J2:8, J1:3 J2:9", nil, []string{"note: end"}, nil},
		"feet and a number": {"a.csv", "Wire,From,To,AWG,Length\n1,ECU:1,INJ:1,22,2'3\n", "ECU:1 INJ:1", nil,
			[]string{"no length"}, []string{"length_mm = 685.8"}},
		"a cable of seven": {"a.csv",
			"Cable,Wire,From,To,AWG\n7x22,1,A:1,B:1,22\n7x22,2,A:2,B:2,22\n7x22,3,A:3,B:3,22\n" +
				"7x22,4,A:4,B:4,22\n7x22,5,A:5,B:5,22\n7x22,6,A:6,B:6,22\n7x22,7,A:7,B:7,22\n",
			"A:1 B:1, A:2 B:2, A:3 B:3, A:4 B:4, A:5 B:5, A:6 B:6, A:7 B:7",
			[]string{"cores of a cable that the list does not call twisted"}, []string{"no other wire beside"}, []string{"7x22"}},
		"a shielded cable of seven": {"a.csv",
			"Cable,Wire,From,To,AWG\n7x22 shielded,1,A:1,B:1,22\n7x22 shielded,2,A:2,B:2,22\n7x22 shielded,3,A:3,B:3,22\n" +
				"7x22 shielded,4,A:4,B:4,22\n7x22 shielded,5,A:5,B:5,22\n7x22 shielded,6,A:6,B:6,22\n7x22 shielded,7,A:7,B:7,22\n",
			"A:1 B:1, A:2 B:2, A:3 B:3, A:4 B:4, A:5 B:5, A:6 B:6, A:7 B:7",
			[]string{"a unit of more wires than a quad"}, []string{"no other wire beside"}, []string{"7x22 shielded"}},
		"a word below a table": {"a.md", "| Wire | From | To | AWG |\n|--|--|--|--|\n| 1 | A:1 | B:1 | 22 |\n\nend\n", "A:1 B:1",
			[]string{"below the table: end"}, []string{"warn"}, nil},
		"what is no date": {"a.csv", "Wire,From,To,AWG\n1,ECU:1,GEN-1,22\n2,ECU:2,MAG-12,22\n3,ECU:3,Feb-25,22\n",
			"ECU:1 GEN:1, ECU:2 MAG:12, ECU:3", []string{"of an end: Feb-25"}, nil, nil},
		"what is no stud": {"a.csv",
			"Wire,From,To,AWG\n1,ECU:1,Battery current sensor,22\n2,ECU:2,Battery current " +
				"sensor,22\n3,ECU:3,BATTERY,12\n4,ECU:4,BATTERY,12\n", "ECU:1 Battery-current-sensor:1, ECU:2 " +
				"Battery-current-sensor:2, ECU:3 BATTERY:1, ECU:4 BATTERY:2",
			[]string{"without cavities: Battery current sensor", "without cavities: BATTERY"}, []string{"stud"}, nil},
		"studs by place": {"a.csv",
			"Wire,From,To,AWG\n1,ECU:1,Engine GND left M6,16\n2,ECU:2,Engine GND left M6,16\n3,ECU:3,battery positive,12\n4,FB:1,battery " +
				"positive,12\n", "ECU:1 Engine-GND-left-M6:1, ECU:2 Engine-GND-left-M6:1, ECU:3 battery-positive:1, FB:1 " +
				"battery-positive:1", nil, []string{"warn", "stop"}, nil},
		"ground and supply on one bolt": {"a.csv", "Wire,Signal,From,To,AWG\n1,Main feed,ECU:1,Stud M8,12\n2,Ground,ECU:2,Stud M8,12\n",
			"ECU:1 Stud-M8:1, ECU:2 Stud-M8:1", []string{"stop: one cavity, two nets"}, nil, nil},
		"no end, told elsewhere": {"a.csv", head + "1,ECU:1,see note,22\n2,ECU:2,INJ:1,22\n", "ECU:1, ECU:2 INJ:1",
			[]string{"end not known: see note"}, nil, nil},
	} {
		t.Run(name, func(t *testing.T) {
			h, report := of(t, c.file, c.list)
			if got := ends(h); got != c.ends {
				t.Errorf("ends %q, want %q\n%s", got, c.ends, report)
			}
			for _, s := range c.says {
				if !strings.Contains(report, s) {
					t.Errorf("not said: %q\n%s", s, report)
				}
			}
			text := string(file.Encode(file.Document{Harness: h}))
			for _, s := range c.holds {
				if !strings.Contains(text, s) {
					t.Errorf("the file lacks %s\n%s\n%s", s, text, report)
				}
			}
			for _, s := range c.not {
				for line := range strings.SplitSeq(report, "\n") {
					// No list here has all its sizes, and where a spare leads is not known.
					if strings.Contains(line, s) && !strings.Contains(line, "without size") {
						t.Errorf("said: %s", line)
					}
				}
			}
		})
	}
}

// Headings with nothing below them are no list.
func TestOnlyHeadings(t *testing.T) {
	for _, list := range []string{"Wire,From,To,AWG\n", "Wire,From,To,AWG\nDrawn by: the shop,,,\n"} {
		tables, err := table.Read("a.csv", []byte(list), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		if _, _, err := wirelist.Import(tables, draft.Options{}); err == nil || !strings.Contains(err.Error(), "no row below") {
			t.Errorf("%q: %v", list, err)
		}
	}
}
