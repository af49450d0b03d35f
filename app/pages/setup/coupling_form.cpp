#include "app/pages/setup/coupling_form.h"

#include "app/pages/setup/part_presenters.h"
#include "app/pages/setup/plan_section.h"
#include "app/widgets/parts.h"
#include "app/widgets/step_line.h"
#include "app/wording/coupling_words.h"
#include "app/wording/plan_field_words.h"
#include "core/lesson/plan_view.h"

#include <QCheckBox>

namespace rig {

CouplingForm::CouplingForm() : EntryForm{SetUpWords::saveWithKey(), true}
{
    using Words = CouplingWords;
    using Entry = CouplingEntry;
    line({"couplingName", Words::name(), Words::nameHint(), Field::CouplingName}, &Entry::name, Width::Whole);
    line({"circuit", Words::circuit(), Words::circuitHint(), {}}, &Entry::circuit);
    line({"access", Words::access(), Words::accessHint(), {}}, &Entry::access);
    m_kind =
        choice({"couplingKind", Words::kind(), {}, {}}, &Entry::kind, CouplingKind::Other, Words::kindName);
    m_pull = part("partPull", Words::pullThere(), &CouplingParts::pull);
    m_securing = part("partSecuring", Words::securingThere(), &CouplingParts::securing);
    m_gap = part("partGap", Words::gapThere(), &CouplingParts::gap);
    choice({"side", Words::side(), {}, {}}, &Entry::side, Side::Right, Words::sideName);
    m_layout = choice({"layout", Words::layout(), {}, {}}, &Entry::layout, Layout::C, Words::layoutName);
    m_leafPlace = line({"leafPlace", Words::leafPlace(), Words::leafPlaceHint(), {}}, &Entry::leafPlace);
    choice({"seenFrom", PlanFieldWords::seenFrom(), {}, {}}, &Entry::seenFrom, AccessSide::Right,
           PlanFieldWords::sideName);
    choice({"mirrorFrom", PlanFieldWords::mirrorFrom(), PlanFieldWords::mirrorHint(), {}}, &Entry::mirrorFrom,
           AccessSide::Right, PlanFieldWords::sideName);
    addPlace();
    line({"couplingNote", Words::note(), {}, {}}, &Entry::note, Width::Whole);
    connect(m_layout, &QComboBox::currentIndexChanged, this, &CouplingForm::explainLayout);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &CouplingForm::explainKind);
    explainLayout();
    explainKind();
}

QCheckBox* CouplingForm::part(const char* name, const QString& text, bool CouplingParts::*member)
{
    auto* box = new QCheckBox{text};
    box->setObjectName(QLatin1String(name));
    box->setAccessibleName(withoutMnemonic(text));
    connect(box, &QCheckBox::clicked, this, &Form::edited);
    bind([=](CouplingEntry& entry) { entry.parts.*member = box->isChecked(); },
         [=](const CouplingEntry& entry) { box->setChecked(entry.parts.*member); });
    addWidget(box);
    return box;
}

void CouplingForm::addPlace()
{
    constexpr int kWhole = 100;
    QComboBox* spot =
        choice({"place", CouplingWords::place(), {}, {}}, &CouplingEntry::spot, PlanSpot::FinTop, spotName);
    m_across =
        number({"planAcross", PlanFieldWords::across(), PlanFieldWords::acrossHint(), Field::PlanAcross},
               &CouplingEntry::planAcross, -kWhole, kWhole);
    m_along = number({"planAlong", PlanFieldWords::along(), PlanFieldWords::alongHint(), Field::PlanAlong},
                     &CouplingEntry::planAlong, 0, kWhole);
    connect(spot, &QComboBox::activated, this, [this, spot] {
        const auto chosen = static_cast<PlanSpot>(spot->currentIndex());
        fillPlace(chosen == PlanSpot::NotGiven ? std::nullopt : std::optional{placeOf(chosen)});
        m_plan->setPlace(typedPlace());
        emit edited();
    });
    m_plan = new PlanSection;
    m_plan->setObjectName("couplingPlan");
    addWidget(m_plan);
    connect(m_plan, &PlanSection::placeMoved, this, [this](CouplingId, const PlanPlace& place) {
        fillPlace(place);
        emit edited();
    });
    for (StepLine* line : {m_across, m_along})
        connect(line, &QLineEdit::textEdited, this, [this] { m_plan->setPlace(typedPlace()); });
}

void CouplingForm::fillPlace(const std::optional<PlanPlace>& place)
{
    const PlanText text = place ? planText(place) : PlanText{};
    m_across->setText(text.across);
    m_along->setText(text.along);
}

std::optional<PlanPlace> CouplingForm::typedPlace() const
{
    constexpr double kWhole = 100;
    bool isAcross = false;
    bool isAlong = false;
    const PlanPlace place{m_across->text().toInt(&isAcross) / kWhole,
                          m_along->text().toInt(&isAlong) / kWhole};
    return isAcross && isAlong ? std::optional{withinPlan(place)} : std::nullopt;
}

void CouplingForm::showOnPlan(const Airframe& airframe, std::vector<Coupling> couplings, CouplingId moved)
{
    if (moved.isNull()) {
        Coupling added;
        added.airframe = airframe.id;
        added.name = entry().name.toStdString();
        couplings.push_back(std::move(added));
    }
    m_plan->display(airframe, couplings, moved);
    m_plan->setPlace(typedPlace());
}

void CouplingForm::setLook(const Look& look)
{
    m_plan->setLook(look);
}

StepLine* CouplingForm::number(const FieldText& text, QString CouplingEntry::*member, int least, int most)
{
    auto* line = new StepLine{least, most};
    connect(line, &QLineEdit::textEdited, this, &Form::edited);
    addField(text, line);
    bind([=](CouplingEntry& entry) { entry.*member = line->text(); },
         [=](const CouplingEntry& entry) { line->setText(entry.*member); });
    return line;
}

void CouplingForm::explainLayout()
{
    setHint(m_layout, CouplingWords::layoutSentence(entry().layout));
}

void CouplingForm::explainKind()
{
    const CouplingKind kind = entry().kind;
    setHint(m_kind, CouplingWords::kindSentence(kind));
    const bool isBall = isBallJoint(kind);
    m_pull->setVisible(!isBall);
    m_securing->setVisible(!isBall);
    m_gap->setVisible(!isBall && kind != CouplingKind::ByItself);
    setFieldVisible(m_layout, isBall);
    setFieldVisible(m_leafPlace, kind != CouplingKind::ByItself);
}

} // namespace rig
