#include "app/report/airframe_card.h"

#include "app/blocks/cells.h"
#include "app/blocks/laid_picture.h"
#include "app/pictures/cutaway.h"
#include "app/report/folded_pages.h"
#include "app/report/pdf_file.h"
#include "app/report/plan_block.h"
#include "app/wording/card_words.h"
#include "app/wording/coupling_words.h"
#include "app/wording/plan_words.h"
#include "app/wording/report_words.h"
#include "app/wording/sentence_parts.h"

#include <QPainter>

#include <algorithm>
#include <array>

namespace rig {

namespace {

// 1/96 inch, before the page is made smaller.
constexpr double kCardPlanHigh = 250;
constexpr double kCardStatesHigh = 236; // two beside each other, twice
constexpr double kCardStatesApart = 8;
constexpr double kCardTitleScale = 0.64;
constexpr std::array kCardStates{JointState::Locked, JointState::PartSeated, JointState::NotSecured,
                                 JointState::NotConnected};

Role roleOf(Side side)
{
    switch (side) {
    case Side::Left:
        return Role::Outside; // red and green, as the lights of the wing tips
    case Side::Right:
        return Role::Inside;
    case Side::None:
        break;
    }
    return Role::InkSoft;
}

// Couplings that look alike.
struct Alike
{
    DrawnLayout drawn;
    QStringList names;
};

// Those of one kind: the same is looked for at each of them.
struct OfKind
{
    CouplingKind kind = CouplingKind::Sleeve;
    std::vector<Alike> layouts; // of anything but a ball joint one
    QStringList unlikeEntered;

    Alike& with(const DrawnLayout& drawn)
    {
        const auto found = std::ranges::find_if(layouts, [&drawn](const Alike& one) {
            return one.drawn.layout == drawn.layout && one.drawn.isSaid == drawn.isSaid &&
                   one.drawn.partSeatedSide == drawn.partSeatedSide;
        });
        return found != layouts.end() ? *found : layouts.emplace_back(Alike{drawn, {}});
    }
};

DrawnLayout drawnOf(const CardSource& source, const Coupling& one)
{
    const auto found = source.drawn.find(one.id);
    return found != source.drawn.end() ? found->second : drawnLayout({one.layout, one.kind, {}, {}});
}

std::vector<OfKind> kindsOf(const CardSource& source)
{
    std::vector<OfKind> all;
    for (const Coupling& one : source.couplings) {
        auto found = std::ranges::find(all, one.kind, &OfKind::kind);
        if (found == all.end())
            found = all.insert(all.end(), OfKind{one.kind, {}, {}});
        const DrawnLayout drawn = isBallJoint(one.kind) ? drawnOf(source, one) : DrawnLayout{};
        found->with(drawn).names << printedName(one.name);
        if (drawn.unlikeEntered)
            found->unlikeEntered << printedName(one.name);
    }
    return all;
}

LaidPicture laidStates(const CutawayJoint& joint, QSizeF size, const FontSizes& fonts)
{
    FontSizes small = fonts; // the joint has the room
    small.scale *= kCardTitleScale;
    const QSizeF each = (size - QSizeF{kCardStatesApart, kCardStatesApart}) / 2;
    std::vector<std::pair<QPointF, CutawayPicture>> pictures;
    QStringList words = CardWords::locked(joint.kind); // no word of the gap
    for (std::size_t i = 0; i < kCardStates.size(); ++i) {
        CutawayView view{joint, poseOf(kCardStates[i])};
        view.withLabels = false;
        view.withCaption = false;
        view.withGap = false;
        const QPointF from{i % 2 == 0 ? 0 : each.width() + kCardStatesApart,
                           i < 2 ? 0 : each.height() + kCardStatesApart};
        pictures.emplace_back(from, layoutCutaway(view, each, small));
        words << CardWords::state(kCardStates[i]);
    }
    return {[pictures = std::move(pictures)](QPainter& painter, const Theme& theme) {
                for (const auto& [from, picture] : pictures) {
                    painter.translate(from);
                    paint(painter, picture, theme);
                    painter.translate(-from);
                }
            },
            words.join(QLatin1Char(' '))};
}

PictureBlock statesPicture(CouplingKind kind, const DrawnLayout& drawn)
{
    PictureBlock block;
    block.height = kCardStatesHigh;
    block.lay = [joint = schematicJoint(drawn, kind)](QSizeF size, const FontSizes& fonts) {
        return laidStates(joint, size, fonts);
    };
    return block;
}

class CardSections
{
public:
    explicit CardSections(const CardSource& source) : m_source{source} {}

    std::vector<Block> make()
    {
        addFront();
        addList();
        addLocked();
        addCautions();
        return std::move(m_blocks);
    }

private:
    void addText(const QString& text, Role role = Role::Ink, bool strong = false)
    {
        m_blocks.emplace_back(ParagraphBlock{text, role, strong, false});
    }

    void addRows(const QStringList& sentences)
    {
        TableBlock table;
        table.columns = {{{}, 1}, {{}, 22}};
        for (const QString& sentence : sentences)
            table.rows.push_back({{said(QStringLiteral("•"))}, {said(sentence)}});
        table.isTight = true;
        m_blocks.emplace_back(std::move(table));
    }

    void addCall()
    {
        m_blocks.emplace_back(HeadingBlock{CardWords::callTitle(), 3});
        addText(CardWords::call(printedName(m_source.airframe.callName)), Role::Ink, true);
        if (!m_source.airframe.callPhone.empty())
            addText(printedName(m_source.airframe.callPhone), Role::Ink, true);
    }

    void addFront()
    {
        m_blocks.emplace_back(HeadingBlock{ReportWords::airframe(printedName(m_source.airframe.registration),
                                                                 printedName(m_source.airframe.type)),
                                           1});
        addText(CardWords::title(), Role::Ink, true);
        m_blocks.emplace_back(planBlock(m_source.airframe, m_source.couplings, kCardPlanHigh));
        const bool hasSquare = std::ranges::any_of(
            m_source.couplings, [](const Coupling& one) { return one.kind == CouplingKind::ByItself; });
        addText(CardWords::plan(hasSquare), Role::InkSoft);
        addCall();
        addText(CardWords::whatThisIs());
    }

    void addList()
    {
        m_blocks.emplace_back(HeadingBlock{CardWords::inOrder(), 2, true});
        TableBlock table;
        table.columns = {{{}, 1.25}, {{}, 9}};
        for (std::size_t i = 0; i < m_source.couplings.size(); ++i) {
            const Coupling& one = m_source.couplings[i];
            Cell number{strongly(PlanWords::number(static_cast<int>(i) + 1))};
            if (one.side != Side::None)
                number.push_back(strongly(CardWords::side(one.side), roleOf(one.side)));
            Cell told{strongly(printedName(one.name))};
            if (!one.access.empty())
                told.push_back(said(printedName(one.access)));
            QStringList last{CardWords::seenFrom(one.seenFrom, one.mirrorFrom), CardWords::holds(one.kind)};
            last.removeAll(QString{});
            told.push_back(softly(last.join(QLatin1Char(' '))));
            table.rows.push_back({std::move(number), std::move(told)});
        }
        m_blocks.emplace_back(std::move(table));
    }

    void addLocked()
    {
        m_blocks.emplace_back(HeadingBlock{CardWords::lockedTitle(), 2});
        m_blocks.emplace_back(ParagraphBlock{CardWords::lockedHow(), Role::Ink, false, true});
        for (const OfKind& one : kindsOf(m_source))
            addKind(one);
    }

    void addKind(const OfKind& one)
    {
        m_blocks.emplace_back(
            HeadingBlock{CouplingWords::kindName(one.kind), 3, false, {}, !isBallJoint(one.kind)});
        addRows(CardWords::locked(one.kind));
        for (const Alike& alike : one.layouts)
            addAlike(one.kind, alike, one.layouts.size() == 1);
        if (!one.unlikeEntered.isEmpty())
            addText(CardWords::unlikeEntered(one.unlikeEntered), Role::InkSoft);
    }

    // One that nobody has said is drawn as is usual only where nothing else is drawn.
    void addAlike(CouplingKind kind, const Alike& alike, bool isOnlyOne)
    {
        if (!isBallJoint(kind)) {
            m_blocks.emplace_back(ParagraphBlock{SentenceParts::list(alike.names), Role::Ink, false, true});
            return;
        }
        if (!alike.drawn.isSaid && !isOnlyOne)
            return addText(CardWords::layoutNotSaid(alike.names), Role::InkSoft);
        const QString whose = alike.drawn.isSaid ? CardWords::layout(alike.drawn.layout, alike.names)
                                                 : CardWords::layoutNotSaid(alike.names);
        m_blocks.emplace_back(ParagraphBlock{whose, Role::Ink, false, true});
        m_blocks.emplace_back(statesPicture(kind, alike.drawn));
    }

    void addCautions()
    {
        m_blocks.emplace_back(HeadingBlock{CardWords::cautionsTitle(), 2, false, {}, true});
        addRows(CardWords::cautions());
        addCall();
    }

    const CardSource& m_source;
    std::vector<Block> m_blocks;
};

} // namespace

std::vector<Block> cardBlocks(const CardSource& source)
{
    return CardSections{source}.make();
}

PageFlow cardOf(const CardSource& source, const Printing& printing)
{
    const PageFrame frame{
        ReportWords::airframe(printedName(source.airframe.registration), printedName(source.airframe.type)),
        CardWords::title(), CardWords::foot(), ReportWords::printed(printing.day, printing.program)};
    return layoutFolded(frame, cardBlocks(source));
}

Outcome writeCard(const QString& path, const CardSource& source, const Printing& printing)
{
    return writePdf(path, cardOf(source, printing), CardWords::title(), printing.program);
}

QString cardFileName(const CardSource& source)
{
    return CardWords::fileName(printedName(source.airframe.registration));
}

} // namespace rig
