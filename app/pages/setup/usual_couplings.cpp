#include "app/pages/setup/usual_couplings.h"

#include "app/wording/coupling_words.h"
#include "core/store/names.h"

#include <QCheckBox>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

UsualCouplingsForm::UsualCouplingsForm(QWidget* parent) : Form{CouplingWords::addChosen(), true, parent}
{
    setTitle(CouplingWords::usualTitle());
    setExplanation(CouplingWords::usualMeaning());
    auto* list = new QWidget;
    auto* layout = new QVBoxLayout{list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        m_boxes[i] = new QCheckBox;
        m_boxes[i]->setObjectName(QStringLiteral("usual%1").arg(i));
        layout->addWidget(m_boxes[i]);
        connect(m_boxes[i], &QCheckBox::toggled, this, &Form::edited);
    }
    addWidget(list);
}

void UsualCouplingsForm::begin(const std::vector<CouplingRow>& known)
{
    QWidget* first = nullptr;
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        const QString name = usualName(kUsualCouplings[i]);
        const bool there = std::ranges::any_of(known, [&name](const CouplingRow& row) {
            return comparable(row.coupling.name) == comparable(name.toStdString());
        });
        m_boxes[i]->setChecked(false);
        m_boxes[i]->setEnabled(!there);
        m_boxes[i]->setText(there ? CouplingWords::alreadyThere(name) : name);
        if (!there && !first)
            first = m_boxes[i];
    }
    showStatus({});
    if (first)
        first->setFocus();
}

std::vector<UsualCoupling> UsualCouplingsForm::ticked() const
{
    std::vector<UsualCoupling> chosen;
    for (std::size_t i = 0; i < m_boxes.size(); ++i)
        if (m_boxes[i]->isChecked())
            chosen.push_back(kUsualCouplings[i]);
    return chosen;
}

} // namespace rig
