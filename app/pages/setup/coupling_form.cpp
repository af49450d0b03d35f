#include "app/pages/setup/coupling_form.h"

#include "app/wording/coupling_words.h"
#include "app/wording/setup_words.h"

#include <QComboBox>
#include <QLineEdit>

namespace rig {

namespace {

QString spotName(PlanSpot spot)
{
    switch (spot) {
    case PlanSpot::WingRootLeft:
        return CouplingWords::wingRootLeft();
    case PlanSpot::WingRootRight:
        return CouplingWords::wingRootRight();
    case PlanSpot::OuterWingLeft:
        return CouplingWords::outerWingLeft();
    case PlanSpot::OuterWingRight:
        return CouplingWords::outerWingRight();
    case PlanSpot::Fuselage:
        return CouplingWords::fuselage();
    case PlanSpot::TailBoom:
        return CouplingWords::tailBoom();
    case PlanSpot::FinFoot:
        return CouplingWords::finFoot();
    case PlanSpot::FinTop:
        return CouplingWords::finTop();
    case PlanSpot::NotGiven:
        break;
    }
    return CouplingWords::placeNotGiven();
}

// The entries stand in the order of the enum, so the index is the kind.
template <typename Kind, typename NameOf> void fill(QComboBox* box, Kind last, NameOf nameOf)
{
    for (int i = 0; i <= static_cast<int>(last); ++i)
        box->addItem(nameOf(static_cast<Kind>(i)));
}

template <typename Kind> Kind kindIn(const QComboBox* box)
{
    return static_cast<Kind>(box->currentIndex());
}

} // namespace

CouplingForm::CouplingForm(QWidget* parent) : Form{SetUpWords::saveWithKey(), true, parent}
{
    m_name = addLine({"couplingName", CouplingWords::name(), CouplingWords::nameHint(), Field::CouplingName},
                     Width::Whole);
    m_circuit = addLine({"circuit", CouplingWords::circuit(), CouplingWords::circuitHint(), {}});
    m_access = addLine({"access", CouplingWords::access(), CouplingWords::accessHint(), {}});
    m_side = addChoice({"side", CouplingWords::side(), {}, {}});
    m_place = addChoice({"place", CouplingWords::place(), {}, {}});
    m_layout = addChoice({"layout", CouplingWords::layout(), {}, {}});
    m_leafPlace = addLine({"leafPlace", CouplingWords::leafPlace(), CouplingWords::leafPlaceHint(), {}});
    m_securing = addChoice({"securing", CouplingWords::securing(), {}, {}});
    m_note = addLine({"couplingNote", CouplingWords::note(), {}, {}});
    fill(m_side, Side::Right, CouplingWords::sideName);
    fill(m_place, PlanSpot::FinTop, spotName);
    fill(m_layout, Layout::C, CouplingWords::layoutName);
    fill(m_securing, Securing::SleeveAndPin, CouplingWords::securingName);
    connect(m_layout, &QComboBox::currentIndexChanged, this, &CouplingForm::explainLayout);
    explainLayout();
}

void CouplingForm::explainLayout()
{
    setHint(m_layout, CouplingWords::layoutSentence(kindIn<Layout>(m_layout)));
}

CouplingEntry CouplingForm::entry() const
{
    CouplingEntry entry;
    entry.name = m_name->text();
    entry.circuit = m_circuit->text();
    entry.side = kindIn<Side>(m_side);
    entry.access = m_access->text();
    entry.layout = kindIn<Layout>(m_layout);
    entry.leafPlace = m_leafPlace->text();
    entry.securing = kindIn<Securing>(m_securing);
    entry.spot = kindIn<PlanSpot>(m_place);
    entry.note = m_note->text();
    return entry;
}

void CouplingForm::setEntry(const CouplingEntry& entry)
{
    m_name->setText(entry.name);
    m_circuit->setText(entry.circuit);
    m_side->setCurrentIndex(static_cast<int>(entry.side));
    m_access->setText(entry.access);
    m_layout->setCurrentIndex(static_cast<int>(entry.layout));
    m_leafPlace->setText(entry.leafPlace);
    m_securing->setCurrentIndex(static_cast<int>(entry.securing));
    m_place->setCurrentIndex(static_cast<int>(entry.spot));
    m_note->setText(entry.note);
}

} // namespace rig
