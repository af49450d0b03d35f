#include "app/theme/theme.h"

#include <QHash>
#include <QRegularExpression>

#include <cmath>

namespace rig {

namespace {

// @Role is replaced by its colour, 12px by the scaled size.
constexpr const char* kSheet = R"(
* { font-family: "Inter"; font-size: 14px; color: @Ink; }
QMainWindow, QDialog, QWidget[page="true"], QScrollArea, QScrollArea > QWidget > QWidget { background: @Paper; }
QScrollArea { border: none; }
QScrollArea#pagesView { border: 2px solid transparent; }
QScrollArea#pagesView:focus { border: 2px solid @Accent; }
QFrame[card="true"] { background: @Card; border: 1px solid @Line; border-radius: 8px; }
QFrame[card="true"] QScrollArea, QFrame[card="true"] QScrollArea > QWidget > QWidget { background: @Card; }
QFrame[verdict="inside"] { background: @InsideFill; border: 2px solid @Inside; border-radius: 8px; }
QFrame[verdict="near"] { background: @NearEdgeFill; border: 2px solid @NearEdge; border-radius: 8px; }
QFrame[verdict="outside"] { background: @OutsideFill; border: 2px solid @Outside; border-radius: 8px; }
QFrame[verdict="unknown"] { background: @UnknownFill; border: 2px dashed @Unknown; border-radius: 8px; }
QLabel[kind="verdict"] { font-size: 19px; font-weight: 600; }
QLabel[kind="verdict"][verdict="inside"] { color: @Inside; }
QLabel[kind="verdict"][verdict="near"] { color: @NearEdgeText; }
QLabel[kind="verdict"][verdict="outside"] { color: @Outside; }
QLabel[kind="verdict"][verdict="unknown"] { color: @Unknown; }
QLabel[verdict] { border: none; background: transparent; }
QFrame[banner="true"] { background: @OutsideFill; border: 1px solid @Outside; border-radius: 0px; }
QFrame[questions="true"] { background: @NearEdgeFill; border: none; border-bottom: 2px solid @NearEdge; border-radius: 0px; }
QFrame[questions="true"] QLabel { font-weight: 600; }
QFrame[rule="true"] { background: @Line; border: none; max-height: 1px; min-height: 1px; }
QLabel { background: transparent; }
QLabel[kind="title"] { font-size: 23px; font-weight: 600; }
QLabel[kind="section"] { font-size: 17px; font-weight: 600; }
QLabel[kind="label"] { font-size: 13px; font-weight: 600; color: @InkSoft; }
QLabel[kind="soft"] { font-size: 13px; color: @InkSoft; }
QLabel[kind="strong"] { font-weight: 600; }
QLabel[kind="caution"] { font-size: 13px; font-weight: 600; color: @NearEdgeText; }
QLabel[kind="problem"] { font-weight: 600; color: @Outside; }

QPushButton { background: @Card; border: 1px solid @Border; border-radius: 6px; padding: 7px 14px; }
QPushButton:hover { border-color: @Accent; }
QPushButton:focus { border: 2px solid @Accent; padding: 6px 13px; }
QPushButton:disabled { color: @InkSoft; background: @UnknownFill; }
QPushButton[kind="primary"] { background: @Accent; color: @AccentText; border-color: @Accent; font-weight: 600; }
QPushButton[kind="primary"]:disabled { background: @UnknownFill; color: @InkSoft; border-color: @Border; }
QPushButton[kind="choice"]:checked, QPushButton[kind="leaf"]:checked { background: @Accent; color: @AccentText; border-color: @Accent; }
QPushButton[kind="leaf"] { background: @StripGround; font-size: 17px; font-weight: 600; padding: 12px 4px; }
QPushButton[kind="leaf"]:focus { padding: 11px 3px; }
QPushButton[kind="leaf"][stacked="true"] { font-size: 12px; padding: 2px; }
QPushButton[kind="answer"] { background: @StripGround; font-weight: 600; padding: 8px 4px; }
QPushButton[kind="answer"]:focus { padding: 7px 3px; }
QPushButton[kind="answer"][wide="true"] { padding: 8px 14px; }
QPushButton[kind="answer"][wide="true"]:focus { padding: 7px 13px; }
QPushButton[kind="answer"]:checked { background: @Accent; color: @AccentText; border-color: @Accent; }
QPushButton[kind="answer"][doubt="true"]:checked { background: @NearEdgeText; color: @Card; border-color: @NearEdgeText; }
QPushButton[kind="chip"] { font-size: 13px; padding: 4px 10px; }
QPushButton[kind="chip"]:focus { padding: 3px 9px; }
QPushButton[kind="chip"]:checked { background: @AccentFill; border: 2px solid @Accent; padding: 3px 9px; }
QPushButton[kind="link"] { background: transparent; border: 1px solid transparent; color: @Accent; padding: 4px 6px; text-align: left; }
QPushButton[kind="link"]:focus { border: 1px solid @Accent; }
QPushButton[kind="row"] { background: transparent; border: 2px solid transparent; border-radius: 8px; padding: 8px; text-align: left; }
QPushButton[kind="row"]:hover { background: @AccentFill; }
QPushButton[kind="row"]:focus { border: 2px solid @InkSoft; }
QPushButton[kind="row"]:checked { background: @AccentFill; border: 2px solid @Accent; }
QWidget[bar="true"] { background: @Bar; }
QWidget[bar="true"] QLabel { color: @BarTextSoft; }
QPushButton[kind="bar"] { background: transparent; color: @BarTextSoft; border: 2px solid transparent; border-radius: 6px; padding: 6px 12px; font-weight: 500; }
QPushButton[kind="bar"]:hover { color: @BarText; }
QPushButton[kind="bar"]:focus { border: 2px solid @BarTextSoft; }
QPushButton[kind="bar"]:checked { background: @BarChosen; color: @BarText; }
QPushButton::menu-indicator { image: none; width: 0; }
QPushButton[kind="registration"] { background: transparent; color: @BarText; font-size: 18px; font-weight: 700; border: 2px solid transparent; border-radius: 6px; padding: 4px 8px; text-align: left; }
QPushButton[kind="registration"]:hover, QPushButton[kind="registration"]:focus { border: 2px solid @BarTextSoft; }

QLineEdit, QPlainTextEdit, QListWidget { background: @Card; border: 1px solid @Border; border-radius: 6px; padding: 6px 8px; selection-background-color: @Accent; selection-color: @AccentText; }
QLineEdit:focus, QPlainTextEdit:focus, QListWidget:focus { border: 2px solid @Accent; padding: 5px 7px; }
QTextBrowser { background: @Card; border: 2px solid transparent; border-radius: 8px; selection-background-color: @Accent; selection-color: @AccentText; }
QTextBrowser:focus { border: 2px solid @Accent; }
QListWidget[chapters="true"] { border: 2px solid transparent; border-radius: 8px; padding: 0px; outline: none; }
QListWidget[chapters="true"]:focus { border: 2px solid @Accent; padding: 0px; }
QListWidget[chapters="true"]::item { padding: 7px 8px; border-radius: 6px; color: @Ink; }
QListWidget[chapters="true"]::item:selected { background: @AccentFill; color: @Ink; }
QComboBox { min-height: 30px; }
QComboBox QAbstractItemView { background: @Card; color: @Ink; selection-background-color: @Accent; selection-color: @AccentText; }
QComboBox QAbstractItemView::item { min-height: 28px; padding: 0px 6px; }
QCheckBox, QRadioButton { spacing: 8px; }
QCalendarWidget QWidget#qt_calendar_navigationbar { background: @Card; }
QCalendarWidget QToolButton { background: @Card; color: @Ink; border: 1px solid transparent; border-radius: 4px; padding: 4px 10px; font-weight: 600; }
QCalendarWidget QToolButton:hover, QCalendarWidget QToolButton:focus { border: 1px solid @Accent; }
QCalendarWidget QToolButton::menu-indicator { image: none; }
QCalendarWidget QAbstractItemView { border: none; outline: none; selection-background-color: @Accent; selection-color: @AccentText; }
QMenu { background: @Card; border: 1px solid @Line; }
QMenu::item { padding: 5px 18px; border: 2px solid transparent; }
QMenu::item:selected { background: @AccentFill; color: @Ink; border: 2px solid @Accent; }
QToolTip { background: @Card; color: @Ink; border: 1px solid @Line; padding: 4px; }
QTableView, QTreeView { background: @Card; border: 1px solid @Line; gridline-color: @Grid; alternate-background-color: @Paper; selection-background-color: @AccentFill; selection-color: @Ink; }
QTableView[flat="true"], QTableView[flat="true"]:focus { border: none; }
QTableView::item { border: 0px; padding: 0px 5px; }
QTableView::item:selected { background: @AccentFill; color: @Ink; border-top: 1px solid @Accent; border-bottom: 1px solid @Accent; }
QTableView:focus { border: 2px solid @Accent; }
QHeaderView { background: @Card; }
QHeaderView::section { background: @Card; border: none; border-bottom: 1px solid @Line; padding: 6px 8px; font-size: 13px; font-weight: 600; color: @InkSoft; }
QSplitter::handle { background: @Paper; }
QProgressBar { background: @StripGround; border: none; border-radius: 3px; max-height: 6px; min-height: 6px; }
QProgressBar::chunk { background: @Inside; border-radius: 3px; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: @Border; border-radius: 5px; min-height: 30px; min-width: 30px; }
QScrollBar::handle:hover { background: @InkSoft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
)";

const QHash<QString, Role>& roleNames()
{
    static const QHash<QString, Role> names = {
        {"Paper", Role::Paper},
        {"Card", Role::Card},
        {"Line", Role::Line},
        {"Border", Role::Border},
        {"Ink", Role::Ink},
        {"InkSoft", Role::InkSoft},
        {"Bar", Role::Bar},
        {"BarText", Role::BarText},
        {"BarTextSoft", Role::BarTextSoft},
        {"BarChosen", Role::BarChosen},
        {"Accent", Role::Accent},
        {"AccentText", Role::AccentText},
        {"AccentFill", Role::AccentFill},
        {"Inside", Role::Inside},
        {"InsideFill", Role::InsideFill},
        {"NearEdge", Role::NearEdge},
        {"NearEdgeFill", Role::NearEdgeFill},
        {"OutsideFill", Role::OutsideFill},
        {"Unknown", Role::Unknown},
        {"NearEdgeText", Role::NearEdgeText},
        {"Outside", Role::Outside},
        {"UnknownFill", Role::UnknownFill},
        {"StripGround", Role::StripGround},
        {"Grid", Role::Grid},
    };
    return names;
}

} // namespace

QPalette paletteFor(const Theme& theme)
{
    QPalette palette;
    const auto set = [&](QPalette::ColorRole role, Role ours) { palette.setColor(role, theme.color(ours)); };
    set(QPalette::Window, Role::Paper);
    set(QPalette::WindowText, Role::Ink);
    set(QPalette::Base, Role::Card);
    set(QPalette::AlternateBase, Role::Paper);
    set(QPalette::Text, Role::Ink);
    set(QPalette::PlaceholderText, Role::InkSoft);
    set(QPalette::Button, Role::Card);
    set(QPalette::ButtonText, Role::Ink);
    set(QPalette::Highlight, Role::Accent);
    set(QPalette::HighlightedText, Role::AccentText);
    set(QPalette::ToolTipBase, Role::Card);
    set(QPalette::ToolTipText, Role::Ink);
    set(QPalette::Link, Role::Accent);
    set(QPalette::Mid, Role::Border); // IndicatorStyle
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, theme.color(Role::InkSoft));
    return palette;
}

QString styleSheetFor(const Theme& theme, const FontSizes& sizes)
{
    static const QRegularExpression token{QStringLiteral("@([A-Za-z]+)|font-size: ([0-9]+)px")};
    const QString source = QString::fromLatin1(kSheet);
    QString sheet;
    qsizetype done = 0;
    for (auto it = token.globalMatch(source); it.hasNext();) {
        const QRegularExpressionMatch match = it.next();
        sheet += QStringView{source}.mid(done, match.capturedStart() - done);
        if (match.hasCaptured(1) && !match.captured(1).isEmpty()) {
            Q_ASSERT(roleNames().contains(match.captured(1)));
            sheet += theme.color(roleNames().value(match.captured(1))).name();
        } else {
            const double pixels = match.captured(2).toInt() * sizes.scale;
            sheet += QStringLiteral("font-size: %1px").arg(std::lround(pixels));
        }
        done = match.capturedEnd();
    }
    sheet += QStringView{source}.mid(done);
    return sheet;
}

} // namespace rig
