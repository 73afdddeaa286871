package org.snugsheet.office.sharing.living;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.functions.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;

/** A workbook of Apache POI, whose evaluator is another engine for the formulas of a living copy. */
final class PoiBook {

    static {
        // The functions of the beta distribution, which POI knows by name only, from Commons Math.
        register("BETADIST", (x, alpha, beta) -> new BetaDistribution(null, alpha, beta).cumulativeProbability(x));
        register(
                "BETAINV",
                (p, alpha, beta) -> new BetaDistribution(null, alpha, beta, 1e-15).inverseCumulativeProbability(p));
    }

    private interface Three {
        double of(double one, double two, double three);
    }

    private final Workbook book = new HSSFWorkbook();
    private final FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();

    private static void register(String name, Three three) {
        if (!WorkbookEvaluator.getNotSupportedFunctionNames().contains(name)) {
            return;
        }
        Function function = (arguments, row, column) -> {
            try {
                double[] numbers = new double[3];
                for (int i = 0; i < 3; i++) {
                    numbers[i] = OperandResolver.coerceValueToDouble(
                            OperandResolver.getSingleValue(arguments[i], row, column));
                }
                return new NumberEval(three.of(numbers[0], numbers[1], numbers[2]));
            } catch (EvaluationException error) {
                return error.getErrorEval();
            } catch (RuntimeException outside) {
                return ErrorEval.NUM_ERROR;
            }
        };
        WorkbookEvaluator.registerFunction(name, function);
    }

    Sheet sheet(String name) {
        return book.createSheet(name);
    }

    void add(StepsPage page) {
        Sheet sheet = book.createSheet(page.name());
        page.rows().forEach((row, cells) -> {
            Row line = sheet.createRow(row);
            cells.forEach((column, content) -> put(line.createCell(column), content));
        });
    }

    static void put(Cell cell, Object content) {
        if (content instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (String.valueOf(content).startsWith("=")) {
            cell.setCellFormula(XlsxBook.notation(String.valueOf(content).substring(1)));
        } else {
            cell.setCellValue(String.valueOf(content));
        }
    }

    CellValue value(String sheet, String address) {
        CellReference at = new CellReference(address);
        return evaluator.evaluate(book.getSheet(sheet).getRow(at.getRow()).getCell(at.getCol()));
    }

    double number(String sheet, String address) {
        CellValue value = value(sheet, address);
        return value.getCellType() == org.apache.poi.ss.usermodel.CellType.NUMERIC
                ? value.getNumberValue()
                : Double.NaN;
    }

    String text(String sheet, String address) {
        return value(sheet, address).getStringValue();
    }

    String shown(String sheet, String address) {
        return value(sheet, address).formatAsString();
    }
}
