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

#include <algorithm>

namespace rig {

namespace {

// 1/96 inch, before the page is made smaller.
constexpr double kCardPlanHigh = 250;
constexpr double kCardCutawayHigh = 152;

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

// Couplings that look alike when locked.
struct Alike
{
    Layout layout = Layout::Unknown;
    QStringList names;
};

// Those of one kind: the same is looked for at each of them.
struct OfKind
{
    CouplingKind kind = CouplingKind::Sleeve;
    std::vector<Alike> layouts; // of a ball joint those that were said; of anything else one
    QStringList withoutLayout;

    Alike& with(Layout layout)
    {
        const auto found = std::ranges::find(layouts, layout, &Alike::layout);
        return found != layouts.end() ? *found : layouts.emplace_back(layout);
    }
};

std::vector<OfKind> kindsOf(const std::vector<Coupling>& couplings)
{
    std::vector<OfKind> all;
    for (const Coupling& one : couplings) {
        auto found = std::ranges::find(all, one.kind, &OfKind::kind);
        if (found == all.end())
            found = all.insert(all.end(), OfKind{one.kind, {}, {}});
        if (!isBallJoint(one.kind))
            found->with(Layout::Unknown).names << textOf(one.name);
        else if (one.layout == Layout::Unknown)
            found->withoutLayout << textOf(one.name);
        else
            found->with(one.layout).names << textOf(one.name);
    }
    return all;
}

PictureBlock lockedPicture(CouplingKind kind, Layout layout)
{
    CutawayView view;
    view.joint.kind = kind;
    view.joint.layout = layout;
    view.pose = poseOf(JointState::Locked);
    view.withCaption = false;
    view.withGap = false;
    PictureBlock block;
    block.height = kCardCutawayHigh;
    block.lay = [view](QSizeF size, const FontSizes& fonts) {
        LaidPicture laid = laidPicture(layoutCutaway(view, size, fonts));
        laid.inWords = CardWords::locked(view.joint.kind).join(QLatin1Char(' ')); // no word of its gap
        return laid;
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
        addText(CardWords::call(textOf(m_source.airframe.callName)), Role::Ink, true);
        if (!m_source.airframe.callPhone.empty())
            addText(textOf(m_source.airframe.callPhone), Role::Ink, true);
    }

    void addFront()
    {
        m_blocks.emplace_back(HeadingBlock{
            ReportWords::airframe(textOf(m_source.airframe.registration), textOf(m_source.airframe.type)),
            1});
        addText(CardWords::title(), Role::Ink, true);
        m_blocks.emplace_back(planBlock(m_source.airframe, m_source.couplings, kCardPlanHigh));
        addText(CardWords::plan(), Role::InkSoft);
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
            Cell told{strongly(textOf(one.name))};
            if (!one.access.empty())
                told.push_back(said(textOf(one.access)));
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
        for (const OfKind& one : kindsOf(m_source.couplings))
            addKind(one);
    }

    void addKind(const OfKind& one)
    {
        m_blocks.emplace_back(
            HeadingBlock{CouplingWords::kindName(one.kind), 3, false, {}, !isBallJoint(one.kind)});
        addRows(CardWords::locked(one.kind));
        for (const Alike& alike : one.layouts)
            addPicture(one.kind, alike.layout, CardWords::layout(alike.layout, alike.names));
        if (one.withoutLayout.isEmpty())
            return;
        const QString notSaid = CardWords::layoutNotSaid(one.withoutLayout);
        if (one.layouts.empty())
            addPicture(one.kind, Layout::Unknown, notSaid);
        else
            addText(notSaid, Role::InkSoft);
    }

    void addPicture(CouplingKind kind, Layout layout, const QString& whose)
    {
        m_blocks.emplace_back(ParagraphBlock{whose, Role::Ink, false, true});
        if (!isBallJoint(kind))
            return;
        m_blocks.emplace_back(lockedPicture(kind, layout));
        addText(CardWords::schematic(), Role::InkSoft);
    }

    void addCautions()
    {
        m_blocks.emplace_back(HeadingBlock{CardWords::cautionsTitle(), 2, false, {}, true});
        addRows(CardWords::cautions());
        addText(CardWords::noBand(), Role::Ink, true);
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
        ReportWords::airframe(textOf(source.airframe.registration), textOf(source.airframe.type)),
        CardWords::title(), CardWords::foot(), ReportWords::printed(printing.day, printing.program)};
    return layoutFolded(frame, cardBlocks(source));
}

Outcome writeCard(const QString& path, const CardSource& source, const Printing& printing)
{
    return writePdf(path, cardOf(source, printing), CardWords::title(), printing.program);
}

QString cardFileName(const CardSource& source)
{
    return CardWords::fileName(textOf(source.airframe.registration));
}

} // namespace rig
