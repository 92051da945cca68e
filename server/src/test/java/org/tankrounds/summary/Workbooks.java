package org.tankrounds.summary;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads a workbook as what it is, a zip of XML (ECMA-376), and adds its sums up. */
final class Workbooks {
    private Workbooks() {}

    static Sheet read(byte[] workbook, int number) {
        try {
            Path file = Files.createTempFile("summary", ".xlsx");
            Files.write(file, workbook);
            try (ZipFile zip = new ZipFile(file.toFile())) {
                return new Sheet(xml(zip, "xl/worksheets/sheet" + number + ".xml"),
                        xml(zip, "xl/sharedStrings.xml"));
            } finally {
                Files.delete(file);
            }
        } catch (IOException | SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("not a workbook", e);
        }
    }

    private static Document xml(ZipFile zip, String name)
            throws IOException, SAXException, ParserConfigurationException {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(zip.getInputStream(zip.getEntry(name)));
    }

    static final class Sheet {
        private static final Pattern SUM = Pattern.compile("SUM\\(([A-Z]+)(\\d+):[A-Z]+(\\d+)\\)");

        private final Document sheet;
        private final NodeList strings;
        private final Map<String, Element> cells = new LinkedHashMap<>();

        private Sheet(Document sheet, Document strings) {
            this.sheet = sheet;
            this.strings = strings.getElementsByTagName("si");
            NodeList found = sheet.getElementsByTagName("c");
            for (int i = 0; i < found.getLength(); i++) {
                Element cell = (Element) found.item(i);
                cells.put(cell.getAttribute("r"), cell);
            }
        }

        String text(String cell) {
            return strings.item(Integer.parseInt(part(cell, "v"))).getTextContent();
        }

        boolean isNumber(String cell) {
            String type = cells.get(cell).getAttribute("t");
            return type.isEmpty() || type.equals("n");
        }

        String formula(String cell) {
            return part(cell, "f");
        }

        int frozenRows() {
            Element pane = (Element) sheet.getElementsByTagName("pane").item(0);
            return (int) Double.parseDouble(pane.getAttribute("ySplit"));
        }

        /** The cell in a row of the column with this heading. */
        String cellBelow(String heading, int row) {
            return cells.keySet().stream()
                    .filter(cell -> cell.matches("[A-Z]+1") && text(cell).equals(heading))
                    .map(cell -> cell.replace("1", Integer.toString(row)))
                    .findFirst().orElseThrow();
        }

        /** What the sum in a row of that column comes to. */
        long sumAt(String heading, int row) {
            Matcher sum = SUM.matcher(formula(cellBelow(heading, row)));
            if (!sum.matches()) {
                throw new IllegalStateException("no sum below " + heading);
            }
            long total = 0;
            for (int i = Integer.parseInt(sum.group(2)); i <= Integer.parseInt(sum.group(3)); i++) {
                total += Math.round(Double.parseDouble(part(sum.group(1) + i, "v")));
            }
            return total;
        }

        /** What stands beside the formula of a cell. */
        long resultAt(String heading, int row) {
            String cell = cellBelow(heading, row);
            formula(cell);
            return Math.round(Double.parseDouble(part(cell, "v")));
        }

        private String part(String cell, String name) {
            return cells.get(cell).getElementsByTagName(name).item(0).getTextContent();
        }
    }
}
