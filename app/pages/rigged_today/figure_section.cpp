#include "app/pages/rigged_today/figure_section.h"

#include "app/pages/rigged_today/measure_card.h"
#include "app/widgets/parts.h"
#include "app/widgets/still_box.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/control_words.h"
#include "app/wording/surface_words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <cstdlib>

namespace rig {

namespace {

constexpr std::array kMeasures{MeasureKind::FreePlay, MeasureKind::Up, MeasureKind::Down};

const std::optional<SurfaceMeasure>& measuredIn(const MeasuredSurface& measured, MeasureKind kind)
{
    switch (kind) {
    case MeasureKind::FreePlay:
        return measured.play;
    case MeasureKind::Up:
        return measured.up;
    case MeasureKind::Down:
        break;
    }
    return measured.down;
}

// Left against right of one kind of figure; empty where one of them lacks.
QString sidesOf(const SurfaceSheet& sheet, MeasureKind kind)
{
    if (!sheet.other)
        return {};
    const bool isLeft = sheet.surface.side == Side::Left;
    const auto& left = measuredIn(isLeft ? sheet.measured : sheet.other->measured, kind);
    const auto& right = measuredIn(isLeft ? sheet.other->measured : sheet.measured, kind);
    if (!left || !right)
        return {};
    const QString name = ControlWords::figureName(kind, sheet.surface.kind);
    const QString leftText = SurfaceWords::figure(left->value, left->unit);
    const QString rightText = SurfaceWords::figure(right->value, right->unit);
    const auto apart = differenceInDegrees(left, right);
    if (!apart)
        return ControlWords::leftAndRight(name, leftText, rightText);
    const Deflection size{std::abs(apart->thousandths)};
    return ControlWords::leftAndRightApart(name, leftText, rightText,
                                           SurfaceWords::workedOut(size, DeflectionUnit::Degrees));
}

// Free play is felt on these, or the manual gives figures.
bool isMeasured(const Surface& surface)
{
    const auto checks = checksOf(surface);
    return std::ranges::find(checks, SurfaceCheckKind::FreePlay) != checks.end() || surface.up ||
           surface.down || surface.mostPlay;
}

} // namespace

FigureSection::FigureSection(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    auto* heading = new QHBoxLayout;
    heading->addWidget(labelOf(ControlWords::figures(), "label"), 1);
    auto* label = labelOf(ControlWords::unitOfUpAndDown(), "soft");
    label->setWordWrap(false);
    heading->addWidget(label);
    m_unit = new StillBox;
    m_unit->setObjectName("deflectionUnit");
    m_unit->setAccessibleName(ControlWords::unitOfUpAndDown());
    m_unit->setAccessibleDescription(m_unit->accessibleName()); // no label says it
    for (const DeflectionUnit unit : {DeflectionUnit::Degrees, DeflectionUnit::Millimetres})
        m_unit->addItem(ControlWords::unitShort(unit));
    connect(m_unit, &QComboBox::activated, this, &FigureSection::unitChosen);
    heading->addWidget(m_unit);
    layout->addLayout(heading);
    auto* row = new WrapLayout{10, true};
    constexpr std::array kNames{"measuredPlay", "measuredUp", "measuredDown"};
    for (const MeasureKind kind : kMeasures) {
        const auto at = static_cast<std::size_t>(kind);
        m_cards[at] = new MeasureCard{kNames[at]};
        row->addWidget(m_cards[at]);
    }
    layout->addLayout(row);
    m_ratio = labelOf({}, "soft", "upOverDown");
    m_sides = labelOf({}, "soft", "leftAndRight");
    layout->addWidget(m_ratio);
    layout->addWidget(m_sides);
}

void FigureSection::begin(const Surface& surface)
{
    m_unit->setCurrentIndex(static_cast<int>(surface.unit));
    for (const MeasureKind kind : kMeasures)
        taken(kind);
}

DeflectionUnit FigureSection::unitFor(MeasureKind kind) const
{
    // Free play is felt and read at the trailing edge.
    return kind == MeasureKind::FreePlay ? DeflectionUnit::Millimetres
                                         : static_cast<DeflectionUnit>(m_unit->currentIndex());
}

void FigureSection::display(const SurfaceSheet& sheet, bool open)
{
    m_open = open && isMeasured(sheet.surface);
    setVisible(isMeasured(sheet.surface));
    QStringList sides;
    for (const MeasureKind kind : kMeasures) {
        showCard(kind, sheet, open);
        sides << sidesOf(sheet, kind);
    }
    sides.removeAll(QString{});
    sayIn(m_sides, sides.join(QLatin1Char(' ')));
    const bool isAileron = sheet.surface.kind == SurfaceKind::Aileron;
    const auto ratio = isAileron ? upOverDown(sheet.measured) : std::nullopt;
    sayIn(m_ratio, ratio ? ControlWords::ratio(*ratio) : QString{});
}

void FigureSection::showCard(MeasureKind kind, const SurfaceSheet& sheet, bool open)
{
    const auto& measured = measuredIn(sheet.measured, kind);
    card(kind)->setTitle(ControlWords::figureLabel(kind, sheet.surface.kind),
                         ControlWords::unitShort(unitFor(kind)));
    card(kind)->setOpen(open);
    QStringList words;
    if (measured)
        words << ControlWords::measured(*measured) << ControlWords::besideManual(sheet.surface, *measured);
    else
        words << ControlWords::fromManual(sheet.surface, kind);
    words.removeAll(QString{});
    card(kind)->show(words);
}

void FigureSection::refuse(MeasureKind kind, const QString& sentence)
{
    card(kind)->refuse(sentence);
}

void FigureSection::taken(MeasureKind kind)
{
    card(kind)->clear();
}

bool FigureSection::takeKey(const QKeyEvent& event)
{
    if (!m_open)
        return false;
    if (isEnter(event))
        return takeEnter();
    for (const MeasureKind kind : kMeasures)
        if (isKey(event, ControlWords::keyOf(kind))) {
            card(kind)->focusLine();
            emit lineOpened(kind);
            return true;
        }
    return false;
}

bool FigureSection::takeEnter()
{
    for (const MeasureKind kind : kMeasures)
        if (const QString figure = card(kind)->figureForEnter(); !figure.isEmpty()) {
            emit typed(kind, unitFor(kind), figure);
            return true;
        }
    return false;
}

QWidget* FigureSection::placeOf(MeasureKind kind) const
{
    return card(kind);
}

} // namespace rig
